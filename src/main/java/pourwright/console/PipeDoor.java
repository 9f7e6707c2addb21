package pourwright.console;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.io.Reader;
import java.util.List;

/** Reads lines as they come and echoes them, so that the record reads like a conversation. For pipes and plain terminals. */
public final class PipeDoor implements Door {
    private static final int LONGEST_LINE = 100_000;

    private final BufferedReader in;
    private final PrintStream out;
    private final int width;
    private final boolean echo;

    /**
     * @param in where lines come from
     * @param out where everything goes
     * @param width columns to wrap at
     * @param echo true to show each answer after its prompt, as a terminal would
     */
    public PipeDoor(Reader in, PrintStream out, int width, boolean echo) {
        this.in = new BufferedReader(in);
        this.out = out;
        this.width = width;
        this.echo = echo;
    }

    @Override
    public String ask(String prompt, List<String> words) {
        out.print(prompt);
        out.flush();
        String line = readLine();
        if (line == null) {
            out.println();
            throw new Ended();
        }
        if (echo) {
            out.println(line);
        }
        return line;
    }

    /** A line of bounded length: what goes beyond is read and dropped, so that memory stays bounded too. */
    private String readLine() {
        try {
            StringBuilder line = new StringBuilder();
            int c = in.read();
            if (c < 0) {
                return null;
            }
            for (; c >= 0 && c != '\n'; c = in.read()) {
                if (c != '\r' && line.length() < LONGEST_LINE) {
                    line.append((char) c);
                }
            }
            return line.toString();
        } catch (IOException e) {
            return null;
        }
    }

    @Override
    public void say(String line) {
        out.println(line);
    }

    @Override
    public int width() {
        return width;
    }

    @Override
    public boolean plain() {
        return true;
    }

    /** Lines are echoed where no terminal shows them as they are typed. */
    @Override
    public boolean person() {
        return !echo;
    }
}
