package bothy;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

@Command(name = "serve")
final class ServeVerb implements Callable<Integer> {
    @Override
    public Integer call() {
        return 0;
    }
}
