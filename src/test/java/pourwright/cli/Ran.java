package pourwright.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** One run of the program, as another program would see it. */
record Ran(int code, String out, String err) {
    static Ran of(String... args) {
        return with("", Map.of(), args);
    }

    /** The same with standard input and environment. */
    static Ran with(String input, Map<String, String> environment, String... args) {
        return with(input.getBytes(StandardCharsets.UTF_8), environment, args);
    }

    static Ran with(byte[] input, Map<String, String> environment, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(
                args,
                new ByteArrayInputStream(input),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                environment);
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
