package pourwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** The program's way in. */
public final class Main {
    private Main() {}

    /** Runs one command and ends with its exit code. */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        int code = run(args, System.in, out, err, System.getenv());
        out.flush();
        System.exit(code);
    }

    /** The same for tests: streams and environment handed in, the exit code handed back. */
    public static int run(
            String[] args, InputStream in, PrintStream out, PrintStream err, Map<String, String> environment) {
        return new Program(in, out, err, environment).run(args);
    }
}
