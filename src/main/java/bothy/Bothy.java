package bothy;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program. Without a verb it opens a chat in the terminal. */
@Command(
        name = "bothy",
        mixinStandardHelpOptions = true,
        version = "Bothy 0.1.0",
        description = "A crop advisor to message: from the seed packet to the store.",
        subcommands = {
            ServeVerb.class,
            BackupVerb.class,
            RehearseVerb.class,
            ReadVerb.class,
            DiagnoseVerb.class,
            CheckVerb.class,
            ImportWeatherVerb.class
        })
public final class Bothy extends ChatVerb {

    /** Runs the program and ends the process with its exit code: 0 well, 1 something differed or failed, 2 wrongly called. */
    public static void main(String[] arguments) {
        int exit = run(arguments);
        System.out.flush();
        System.err.flush();
        // Not System.exit when all went well: run from Maven, the process is not ours to end.
        if (exit != 0) {
            System.exit(exit);
        }
    }

    static int run(String... arguments) {
        Logs.forAPerson();
        return new CommandLine(new Bothy())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((thrown, line, parsed) -> {
                    line.getErr().println(Complaints.sentence(thrown));
                    return 1;
                })
                .execute(arguments);
    }
}
