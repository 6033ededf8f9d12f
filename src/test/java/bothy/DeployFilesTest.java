package bothy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** What is given along to run the service names only what there is. */
class DeployFilesTest {
    private static final Path DEPLOY = Path.of("src/main/deploy");
    private static final Pattern FLAG = Pattern.compile("(?<![\\w-])--[a-z][a-z-]+");
    private static final Pattern VARIABLE = Pattern.compile("BOTHY_[A-Z_]+");
    private static final Pattern METRIC = Pattern.compile("bothy_[a-z_]+");
    /** Of systemd.exec(5), systemd.service(5) and systemd.unit(5), those that the unit may use. */
    private static final Set<String> DIRECTIVES = Set.of(
            "Description",
            "Wants",
            "After",
            "ExecStart",
            "EnvironmentFile",
            "Environment",
            "DynamicUser",
            "StateDirectory",
            "CacheDirectory",
            "SuccessExitStatus",
            "TimeoutStopSec",
            "Restart",
            "RestartSec",
            "NoNewPrivileges",
            "ProtectSystem",
            "ProtectHome",
            "PrivateTmp",
            "PrivateDevices",
            "ProtectKernelTunables",
            "ProtectControlGroups",
            "RestrictAddressFamilies",
            "UMask",
            "WantedBy");

    private static String read(String file) throws IOException {
        return Files.readString(DEPLOY.resolve(file));
    }

    private static Set<String> found(Pattern pattern, String text) {
        Set<String> found = new TreeSet<>();
        pattern.matcher(text).results().forEach(match -> found.add(match.group()));
        return found;
    }

    private static Set<String> flags() {
        CommandLine program = Bothy.line(false);
        Set<String> flags = new HashSet<>();
        for (String verb : List.of("serve", "backup")) {
            CommandSpec spec = program.getSubcommands().get(verb).getCommandSpec();
            spec.options().forEach(option -> flags.addAll(List.of(option.names())));
        }
        return flags;
    }

    @Test
    void every_flag_named_is_one_of_the_program() throws IOException {
        String unit = read("bothy.service");
        String start = unit.lines()
                .filter(line -> line.startsWith("ExecStart="))
                .findFirst()
                .orElseThrow();
        String named = read("README.md") + read("bothy.conf") + start;

        assertThat(found(FLAG, named)).isNotEmpty().isSubsetOf(flags());
    }

    @Test
    void the_options_file_is_taken_as_it_is() throws IOException {
        CommandLine.ParseResult parsed = Bothy.line(false)
                .parseArgs("serve", "@" + DEPLOY.resolve("bothy.conf"))
                .subcommand();

        assertThat(parsed.matchedOptions()).hasSize(4);
    }

    @Test
    void every_variable_named_is_one_that_the_program_reads() throws IOException {
        StringBuilder source = new StringBuilder();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/bothy"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                source.append(Files.readString(file));
            }
        }
        String named = read("README.md") + read("bothy.service") + read("Containerfile");

        assertThat(found(VARIABLE, named)).isNotEmpty().isSubsetOf(found(VARIABLE, source.toString()));
    }

    @Test
    void every_metric_named_is_one_that_is_shown() throws IOException {
        String shown = new Watch(Stores.empty(), java.time.Clock.systemUTC()).metrics();

        assertThat(found(METRIC, read("README.md"))).isNotEmpty().allMatch(shown::contains);
    }

    @Test
    void the_unit_is_well_formed_and_stops_as_slowly_as_the_service_may() throws IOException {
        TreeMap<String, List<String>> sections = new TreeMap<>();
        String section = "";
        TreeMap<String, String> values = new TreeMap<>();
        for (String line : read("bothy.service").lines().toList()) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            if (line.matches("\\[\\w+]")) {
                section = line;
                continue;
            }
            assertThat(line).matches("[A-Za-z]+=.+");
            String key = line.substring(0, line.indexOf('='));
            values.put(key, line.substring(line.indexOf('=') + 1));
            sections.computeIfAbsent(section, name -> new ArrayList<>()).add(key);
        }
        assertThat(sections.keySet()).containsExactly("[Install]", "[Service]", "[Unit]");
        assertThat(values.keySet()).isSubsetOf(DIRECTIVES);
        assertThat(values.get("ExecStart")).startsWith("/usr/bin/java ").endsWith(" serve @/etc/bothy/bothy.conf");
        assertThat(values.get("SuccessExitStatus")).isEqualTo("143");
        assertThat(Long.parseLong(values.get("TimeoutStopSec")) * 1000).isGreaterThan(Serving.LAST_WORK_MILLIS);
    }

    @Test
    void the_image_runs_as_a_user_of_its_own_and_serves_what_its_health_check_asks() throws IOException {
        List<String> lines = read("Containerfile").lines().toList();

        assertThat(lines).contains("USER bothy", "EXPOSE 8080", "CMD [\"serve\"]");
        assertThat(lines).anyMatch(line -> line.startsWith("ENV ") && line.contains("BOTHY_HTTP=0.0.0.0:8080"));
        assertThat(lines).anyMatch(line -> line.startsWith("HEALTHCHECK ") && line.contains("GET /health "));
    }
}
