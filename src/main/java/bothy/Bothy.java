package bothy;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program. Without a verb it opens a chat in the terminal. */
@Command(
        name = "bothy",
        mixinStandardHelpOptions = true,
        version = "Bothy 0.1.0",
        description = "A crop advisor to message: from the seed packet to the store.")
public final class Bothy extends ChatVerb {
    private static final Set<String> HELP = Set.of("-h", "--help", "-V", "--version");
    private static final Map<String, Supplier<Object>> VERBS = verbs();

    /** Runs the program and ends the process with its exit code: 0 well, 1 something differed or failed, 2 wrongly called. */
    public static void main(String[] arguments) {
        int exit = chats(arguments)
                ? QuickStart.chat(arguments).orElseGet(() -> {
                    QuickStart.endWithTheFirst();
                    return run(arguments);
                })
                : run(arguments);
        System.out.flush();
        System.err.flush();
        // Not System.exit when all went well: run from Maven, the process is not ours to end.
        if (exit != 0) {
            System.exit(exit);
        }
    }

    /** No verb and no help is asked for. */
    private static boolean chats(String... arguments) {
        return Stream.of(arguments).noneMatch(argument -> VERBS.containsKey(argument) || HELP.contains(argument));
    }

    static int run(String... arguments) {
        Logs.forAPerson();
        return line(chats(arguments)).execute(arguments);
    }

    /** The verbs are made known only where one may be meant, since that takes time and most starts are of a chat. */
    static CommandLine line(boolean chat) {
        CommandLine line = new CommandLine(new Bothy());
        if (chat) {
            line.setParameterExceptionHandler((wrong, arguments) -> line(false).execute(arguments));
        } else {
            VERBS.forEach((name, verb) -> line.addSubcommand(name, verb.get()));
            line.setParameterExceptionHandler((wrong, arguments) -> {
                PrintWriter err = wrong.getCommandLine().getErr();
                err.println(wrong.getMessage());
                UnmatchedArgumentException.printSuggestions(wrong, err);
                err.println("--help lists what may be given.");
                return 2;
            });
        }
        return line.registerConverter(LocalDate.class, Bothy::day)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((thrown, running, parsed) -> {
                    running.getErr().println(Complaints.sentence(thrown));
                    return 1;
                });
    }

    /** A day of the calendar, or what is wrong with it in a grower's words. */
    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException none) {
            throw new TypeConversionException("“" + text + "” is no day of the calendar; write a day as 2027-05-01.");
        }
    }

    private static Map<String, Supplier<Object>> verbs() {
        Map<String, Supplier<Object>> verbs = new LinkedHashMap<>();
        verbs.put("serve", ServeVerb::new);
        verbs.put("backup", BackupVerb::new);
        verbs.put("rehearse", RehearseVerb::new);
        verbs.put("read", ReadVerb::new);
        verbs.put("diagnose", DiagnoseVerb::new);
        verbs.put("check", CheckVerb::new);
        verbs.put("import-weather", ImportWeatherVerb::new);
        return verbs;
    }
}
