package bothy;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

@Command(name = "read")
final class ReadVerb implements Callable<Integer> {
    @Override
    public Integer call() {
        return 0;
    }
}
