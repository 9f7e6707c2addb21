package pourwright.console;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.Reference;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.DefaultParser;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.DumbTerminal;

/** A terminal with line editing, history and completion. */
public final class JLineDoor implements Door, AutoCloseable {
    private static final int USUAL_WIDTH = 80;
    private static final Map<String, String> ARROWS = Map.of(
            "A", LineReader.UP_LINE_OR_SEARCH,
            "B", LineReader.DOWN_LINE_OR_SEARCH,
            "C", LineReader.FORWARD_CHAR,
            "D", LineReader.BACKWARD_CHAR);

    private final Terminal terminal;
    private final LineReader reader;
    private List<String> words = List.of();

    /** @param terminal an open terminal; closed with this door */
    public JLineDoor(Terminal terminal) {
        this.terminal = terminal;
        DefaultParser parser = new DefaultParser();
        // People type 3/4", Windows paths and "20 in!": none of it is an escape, a quote or a history call.
        parser.setEscapeChars(new char[0]);
        parser.setQuoteChars(new char[0]);
        this.reader = LineReaderBuilder.builder()
                .terminal(terminal)
                .appName("pourwright")
                .parser(parser)
                .completer((r, line, candidates) -> words.stream()
                        .filter(w -> w.startsWith(line.word().toLowerCase(Locale.ROOT)))
                        .forEach(w -> candidates.add(new Candidate(w))))
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.BRACKETED_PASTE, false)
                // Tab completes what is plain and does no more: a list or a menu would draw over lines already read
                // out.
                .option(LineReader.Option.AUTO_LIST, false)
                .option(LineReader.Option.AUTO_MENU, false)
                .variable(LineReader.BELL_STYLE, "none")
                .build();
        // Not every terminal changes what its arrow keys send when asked to; the usual form would be typed as text.
        ARROWS.forEach(
                (key, widget) -> reader.getKeyMaps().get(LineReader.MAIN).bind(new Reference(widget), "\u001b[" + key));
    }

    /**
     * Makes the line editor ready on a thread of its own while the terminal is being opened: it edits one empty line that
     * nobody sees. Setting up its keys takes longer than opening the terminal does. Whoever wants a door should wait for
     * the end of it: two threads that set up the same keys at once do all of it twice.
     */
    public static Thread prepare() {
        Thread thread = new Thread(JLineDoor::rehearse, "line-editor");
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    private static void rehearse() {
        try (Terminal nowhere = new Rehearsal();
                JLineDoor door = new JLineDoor(nowhere)) {
            door.ask("> ", List.of());
        } catch (IOException | Ended | Interrupted e) {
            // What could not be rehearsed takes its time at the first question.
            return;
        }
    }

    /** A terminal that nobody sits at: it types Enter and shows nothing. */
    private static final class Rehearsal extends DumbTerminal {
        private static final String TYPE = "xterm";

        Rehearsal() throws IOException {
            super(
                    "rehearsal",
                    TYPE,
                    new ByteArrayInputStream(new byte[] {'\r'}),
                    OutputStream.nullOutputStream(),
                    StandardCharsets.UTF_8);
        }

        @Override
        protected void parseInfoCmp() {
            Capabilities.known(TYPE, bools, ints, strings);
        }
    }

    @Override
    public String ask(String prompt, List<String> offered) {
        words = offered;
        try {
            return reader.readLine(prompt);
        } catch (UserInterruptException e) {
            throw new Interrupted();
        } catch (EndOfFileException e) {
            throw new Ended();
        }
    }

    @Override
    public void say(String line) {
        terminal.writer().println(Clean.text(line));
        terminal.writer().flush();
    }

    @Override
    public int width() {
        int w = terminal.getSize().getColumns();
        return w > 0 ? w : USUAL_WIDTH;
    }

    @Override
    public boolean plain() {
        return false;
    }

    @Override
    public void close() throws IOException {
        terminal.close();
    }
}
