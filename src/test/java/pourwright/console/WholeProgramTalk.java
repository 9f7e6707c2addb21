package pourwright.console;

import java.io.ByteArrayOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pourwright.cli.Main;
import pourwright.knowledge.Knowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.testing.Generated;

/** A simulated person in front of the whole program: bytes in, bytes out, no door between. Also runs alone, in a Java of its own. */
final class WholeProgramTalk {
    private static final long SEED = 99;
    private static final Knowledge KNOWLEDGE = knowledge();
    private static final String[] SAYINGS = {
        "tiny bubbles",
        "under the horns",
        "sticky skin",
        "the face is grey",
        "cracks",
        "soft spots at 20 °C",
        "sehr klebrig"
    };

    private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
    private final StringBuilder typed = new StringBuilder();
    private final String word;

    private WholeProgramTalk(String word) {
        this.word = word;
    }

    private static Knowledge knowledge() {
        Path dir = Path.of("knowledge");
        return KnowledgeReader.forDiagnosis(dir, KnowledgeReader.read(dir)).base();
    }

    /** The talk of that number, held from the first byte to the last. */
    static WholeProgramTalk held(int number) {
        WholeProgramTalk talk = new WholeProgramTalk(number % 2 == 0 ? "plan" : "diagnose");
        Path shop = shop(number);
        delete(shop);
        Generated any =
                Generated.tries(SEED, number + 1).skip(number).findFirst().orElseThrow();
        SimulatedPerson person = new SimulatedPerson(any, KNOWLEDGE, talk.word, SAYINGS);
        PrintStream out = new PrintStream(talk.shown, true, StandardCharsets.UTF_8);
        int code = Main.run(
                new String[] {talk.word, "--shop", shop.toString()}, talk.keyboard(person), out, out, Map.of());
        out.print("exit " + code + "\n");
        delete(shop);
        return talk;
    }

    /** The same path everywhere, since "save" shows it. */
    static Path shop(int number) {
        return Path.of("target", "talk-shop-" + number);
    }

    static void delete(Path folder) {
        try (Stream<Path> all = Files.exists(folder) ? Files.walk(folder) : Stream.empty()) {
            for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(p);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String word() {
        return word;
    }

    byte[] bytes() {
        return shown.toByteArray();
    }

    /** All that was typed, as it could be piped in. */
    String typed() {
        return typed.toString();
    }

    /** Types a line when the program asks for one: what stands after the last line end is the prompt. */
    private InputStream keyboard(SimulatedPerson person) {
        return new InputStream() {
            private byte[] line = {};
            private int at;
            private boolean invited = word.equals("diagnose");

            @Override
            public int read() {
                return more() ? line[at++] & 0xff : -1;
            }

            // A reader of bytes asks for thousands at once and must be given one line.
            @Override
            public int read(byte[] to, int from, int most) {
                if (!more()) {
                    return -1;
                }
                int n = Math.min(most, line.length - at);
                System.arraycopy(line, at, to, from, n);
                at += n;
                return n;
            }

            private boolean more() {
                if (at == line.length) {
                    String all = shown.toString(StandardCharsets.UTF_8);
                    String prompt = all.substring(all.lastIndexOf('\n') + 1).replace(" > ", "");
                    String text = types(prompt);
                    if (text == null) {
                        return false;
                    }
                    typed.append(text).append('\n');
                    line = (text + "\n").getBytes(StandardCharsets.UTF_8);
                    at = 0;
                }
                return true;
            }

            /** Ctrl-C cannot be piped: such a person ends the input instead. */
            private String types(String prompt) {
                boolean invitation = invited && prompt.equals(word);
                invited &= !invitation;
                try {
                    return person.types(prompt, invitation ? List.of() : List.of("quit"));
                } catch (Door.Interrupted e) {
                    return null;
                }
            }
        };
    }

    /** Holds the first talks and prints their bytes; the number is the one argument. */
    public static void main(String[] args) {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        for (int n = 0; n < Integer.parseInt(args[0]); n++) {
            byte[] all = held(n).bytes();
            out.write(all, 0, all.length);
        }
        out.flush();
    }
}
