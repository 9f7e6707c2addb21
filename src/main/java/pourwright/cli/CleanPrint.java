package pourwright.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import pourwright.console.Clean;

/** Prints lines without what could steer a terminal, and ends them alike on every system. */
final class CleanPrint extends PrintStream {
    CleanPrint(PrintStream to) {
        super(to, false, StandardCharsets.UTF_8);
    }

    @Override
    public void print(String text) {
        super.print(Clean.text(String.valueOf(text)));
    }

    @Override
    public void println(String text) {
        print(String.valueOf(text) + "\n");
        flush();
    }
}
