package pourwright.cli;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing leaves the machine. Whoever opens a socket in Java needs one of a few classes, and Java logs each class it
 * loads: after every word of the command line none of them was. That holds for the libraries too.
 */
class NoSocketTest {
    /** Without one of these Java opens no connection, listens at no port and asks no name server. */
    private static final String OF_SOCKETS = "java\\.net\\.(Server|Datagram|Multicast)?Socket|java\\.net\\.SocketImpl"
            + "|java\\.net\\.DatagramSocketImpl|java\\.net\\.http\\..*|java\\.net\\.HttpURLConnection"
            + "|java\\.nio\\.channels\\.((Async.*|Server)?SocketChannel|DatagramChannel)"
            + "|sun\\.nio\\.ch\\.(Net|NioSocketImpl|(Server)?SocketChannelImpl|DatagramChannelImpl|UnixDomainSockets)"
            + "|sun\\.net\\.www\\.protocol\\.(http|https|ftp)\\..*|java\\.net\\.Inet[46]AddressImpl";

    private static final Pattern LOADED = Pattern.compile("(?m)^\\[.*?] ?(\\S+) source:");
    private static final long GUARD_S = 120;

    /** One call for each word, those that talk with a few lines typed; FOLDER is an empty one. */
    private static final List<List<String>> WORDS = List.of(
            List.of("plan", "--answers", "src/main/app/training.json", "--json"),
            List.of("plan", "--shop", "FOLDER"),
            List.of("diagnose", "--answers", "src/main/app/training-diagnosis.json", "--json"),
            List.of("diagnose", "material=fast-polyurethane", "symptom=bubbles", "--no-input"),
            List.of("vents", "undercut-width=8mm", "undercut-depth=20mm", "undercut-blind=yes", "--no-input"),
            List.of("kit", "lid-state=cracked", "--no-input"),
            List.of("learn", "--shop", "FOLDER"),
            List.of("cases", "--like", "transcripts-of-cases/lantern-finial-block-mould.case.json", "--shop", "FOLDER"),
            List.of("outcome", "--help"),
            List.of("shop", "check", "--shop", "FOLDER"),
            List.of("card"),
            List.of("now", "foam at the rmi"),
            List.of("figure", "pump-down-time", "chamber-volume=20", "pump-speed=1", "target-pressure=30"),
            List.of("questions"),
            List.of("rules"),
            List.of("check", "knowledge"),
            List.of("resume", "--shop", "FOLDER"),
            List.of("forget", "all", "--shop", "FOLDER"),
            List.of("stock", "add", "material=tin-silicone", "part=base", "left=3 kg", "--shop", "FOLDER"),
            List.of("ask", "material=tin-silicone", "batch-mass=1 kg", "kit=vacuum", "--sensitive", "--no-input"),
            List.of("define", "gel", "time"),
            List.of("rule", "cup-too-small"),
            List.of("replay", "transcripts-of-cases/rocking-horse-ear-mould-up-the-hill.case.json"),
            List.of("generate", "manual"),
            List.of("--version"),
            List.of("--help"));

    @TempDir
    Path dir;

    /** The child of the first test: every word, one after the other. */
    static final class EveryWord {
        private EveryWord() {}

        /** Runs them in the folder that is named. */
        public static void main(String[] args) {
            PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
            for (List<String> words : WORDS) {
                byte[] typed = "tin silicone\nnow foam\nwhy\n2\nquit\n".getBytes(StandardCharsets.UTF_8);
                String[] call = words.stream()
                        .map(word -> word.equals("FOLDER") ? args[0] : word)
                        .toArray(String[]::new);
                int code = Main.run(call, new ByteArrayInputStream(typed), nowhere, nowhere, Map.of());
                System.out.println(words.get(0) + " " + code);
            }
            System.exit(0);
        }
    }

    /** The child that shows the check can fail: it opens sockets, on this machine only. */
    static final class Opens {
        private Opens() {}

        /** Opens one of each kind. */
        public static void main(String[] args) throws IOException {
            try (ServerSocket here = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                    SocketChannel there = SocketChannel.open()) {
                System.out.println(here.isBound() && there.isOpen());
            }
        }
    }

    @Test
    void noWordLoadsWhatASocketNeeds() throws IOException, InterruptedException {
        Ended ended = ended(EveryWord.class, dir.toString());
        // A word that was refused would prove little.
        assertThat(ended.out()).as("no word was refused, and none met a fault").doesNotContain(" 2\n", " 3\n");
        Set<String> tried = WORDS.stream().map(words -> words.get(0)).collect(Collectors.toSet());
        assertThat(tried)
                .as("every word")
                .containsAll(new Program(System.in, System.out, System.err, Map.of())
                        .commandLine("")
                        .getSubcommands()
                        .keySet());
        assertThat(ended.loaded()).contains("pourwright.cli.Main", "pourwright.advice.Advisor", "java.lang.String");
        assertThat(ofSockets(ended.loaded())).isEmpty();
    }

    @Test
    void aProgramThatOpensSocketsIsFound() throws IOException, InterruptedException {
        assertThat(ofSockets(ended(Opens.class).loaded()))
                .contains("java.net.ServerSocket", "sun.nio.ch.SocketChannelImpl", "sun.nio.ch.Net");
    }

    /** Also on ways that no word above takes. */
    @Test
    void noClassOfOursNamesOne() {
        noClasses()
                .should()
                .dependOnClassesThat(describe("open sockets", c -> c.getName().matches(OF_SOCKETS)))
                .check(new ClassFileImporter().importPath(Path.of("target/classes/pourwright")));
    }

    /** What a child printed, and the classes it loaded. */
    private record Ended(String out, Set<String> loaded) {}

    private static Set<String> ofSockets(Set<String> loaded) {
        return loaded.stream().filter(name -> name.matches(OF_SOCKETS)).collect(Collectors.toCollection(TreeSet::new));
    }

    private Ended ended(Class<?> child, String... args) throws IOException, InterruptedException {
        // The switch takes no name with a colon, as a whole path on Windows has.
        Path log = Path.of("target", child.getSimpleName() + ".log");
        Path out = dir.resolve(child.getSimpleName() + ".out");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:file=" + log,
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Dpourwright.home=" + Path.of("").toAbsolutePath(),
                "-cp",
                System.getProperty("java.class.path"),
                child.getName()));
        command.addAll(List.of(args));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        assertThat(process.waitFor(GUARD_S, TimeUnit.SECONDS)).as("it ended").isTrue();
        assertThat(process.exitValue()).as(Files.readString(out)).isZero();
        String lines = Files.readString(log);
        Set<String> loaded = new TreeSet<>();
        for (Matcher m = LOADED.matcher(lines); m.find(); ) {
            loaded.add(m.group(1));
        }
        return new Ended(Files.readString(out), loaded);
    }
}
