package bothy.advice;

import bothy.almanac.Problem;
import bothy.almanac.RulesBroken;
import bothy.almanac.RulesFolder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import org.kie.api.definition.rule.Global;
import org.kie.api.io.ResourceType;
import org.kie.api.runtime.KieContainer;
import org.kie.api.runtime.KieSession;

/** The compiled rules of one rules folder. Safe for use by many threads; each run takes a session of its own. */
public final class RuleBook implements AutoCloseable {
    static final String PACKAGE = "bothy.rules";
    private static final String SOURCES = "src/main/resources/bothy/rules/";

    private final KieContainer container;
    private final KieBase base;
    private final Set<String> globals;

    private RuleBook(KieContainer container) {
        this.container = container;
        this.base = container.getKieBase();
        this.globals = base.getKiePackages().stream()
                .flatMap(rules -> rules.getGlobalVariables().stream())
                .map(Global::getName)
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * Compiles the rules, or takes them compiled from the cache when neither the rules nor the fact classes nor the rule engine
     * have changed since.
     *
     * @param cache folder for compiled rules, {@code null} for none; what lies there is run as code, so only the user that runs
     *     the program may write to it
     * @throws RulesBroken when a rule does not compile, with file and line
     */
    public static RuleBook of(RulesFolder folder, Path cache) {
        CompiledRules compiled = new CompiledRules(folder, cache);
        return compiled.kept().map(RuleBook::new).orElseGet(() -> {
            InternalKieModule module = compile(folder, compiled.releaseId());
            compiled.keep(module);
            return new RuleBook(KieServices.get().newKieContainer(compiled.releaseId()));
        });
    }

    /** Whether these rules need not be compiled, at the next start at least. */
    public static boolean compiled(RulesFolder folder, Path cache) {
        return new CompiledRules(folder, cache).ready();
    }

    private static InternalKieModule compile(RulesFolder folder, ReleaseId release) {
        List<Problem> strays = folder.paths("", ".drl").stream()
                .filter(path ->
                        folder.text(path).lines().noneMatch(line -> line.strip().matches("package " + PACKAGE + ";?")))
                .map(path -> new Problem(path, 1, "the file must begin with: package " + PACKAGE))
                .toList();
        if (!strays.isEmpty()) {
            throw new RulesBroken(strays);
        }
        try {
            KieBuilder builder = build(folder.paths("", ".drl"), folder, release);
            if (builder.getResults().hasMessages(Message.Level.ERROR)) {
                throw new RulesBroken(problems(folder, builder.getResults().getMessages(Message.Level.ERROR)));
            }
            return (InternalKieModule) builder.getKieModule();
        } catch (RulesBroken known) {
            throw known;
        } catch (RuntimeException | LinkageError thrown) {
            // The builder throws instead of reporting for some mistakes, and must not be asked for its results after
            // that.
            throw new RulesBroken(new RuleDoctor(folder).examine(List.of(firstCause(thrown))));
        }
    }

    static KieBuilder build(List<String> paths, RulesFolder folder, ReleaseId release) {
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        for (String path : paths) {
            files.write(
                    SOURCES + path.replace('/', '-'),
                    services.getResources()
                            .newByteArrayResource(folder.text(path).getBytes(java.nio.charset.StandardCharsets.UTF_8))
                            .setResourceType(ResourceType.DRL));
        }
        files.generateAndWritePomXML(release);
        KieBuilder builder = services.newKieBuilder(files);
        builder.buildAll(ExecutableModelProject.class);
        return builder;
    }

    private static List<Problem> problems(RulesFolder folder, List<Message> messages) {
        List<String> texts = new ArrayList<>();
        for (Message message : messages) {
            texts.add(message.getText());
        }
        return new RuleDoctor(folder).examine(texts);
    }

    private static String firstCause(Throwable thrown) {
        Throwable cause = thrown;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return String.valueOf(cause.getMessage());
    }

    /**
     * A session for one run, for one thread. It is not told so (ThreadSafeOption.NO): sessions that are share the arguments of consequences
     * with all others on these rules, and one grower's advice may then be given in another's run.
     *
     * @param known what rules look up by name; names that no rule declares as a global are passed over
     */
    KieSession session(Map<String, Object> known) {
        KieSession session = base.newKieSession();
        known.forEach((name, value) -> {
            if (globals.contains(name)) {
                session.setGlobal(name, value);
            }
        });
        return session;
    }

    /** Lets go of the compiled rules; runs that are under way must have ended. */
    @Override
    public void close() {
        ReleaseId release = container.getReleaseId();
        container.dispose();
        KieServices.get().getRepository().removeKieModule(release);
    }
}
