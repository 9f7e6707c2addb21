package pourwright.console;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.diagnosis.Diagnoser;
import pourwright.knowledge.DiagnosticKnowledge;
import pourwright.knowledge.KnowledgeReader;
import pourwright.testing.Generated;

/**
 * Many people talk to the console, each made of chance. More of them:
 * {@code mvn test -Dtest=SimulatedTalkTest -Dpourwright.talks=100000}.
 */
class SimulatedTalkTest {
    private static final long SEED = 20260214;
    private static final int TALKS = Integer.getInteger("pourwright.talks", 2000);
    private static final int THREADS = 2;

    /** So many talks are held again elsewhere in the world. */
    private static final int AGAIN = 24;

    /** One in so many keeps a folder: forcing every answer to disk is what takes time. */
    private static final int KEEPS = 24;

    private static final DiagnosticKnowledge KNOWLEDGE =
            KnowledgeReader.forDiagnosis(Path.of("knowledge"), KnowledgeReader.read(Path.of("knowledge")));
    private static final String[] SAYINGS = sayings();

    @TempDir
    private static Path folder;

    private static final Map<Integer, String> DIGESTS = new TreeMap<>();
    private static final List<String> FAULTS = new ArrayList<>();
    private static final Map<String, Integer> ENDS = new TreeMap<>();
    private static QuestionEffects effects;

    private static String[] sayings() {
        return KNOWLEDGE.observations().stream()
                .flatMap(q -> q.choices().stream())
                .flatMap(c -> Stream.concat(Stream.of(c.text()), c.says().stream()))
                .toArray(String[]::new);
    }

    /** One talk; the same number is the same talk. */
    private static SimulatedTalk talk(int number, Generated any, Diagnoser diagnoser, QuestionEffects noted) {
        String word = number % 2 == 0 ? "plan" : "diagnose";
        Path shop = number / 2 % KEEPS == 0 ? folder.resolve("shop-" + number) : null;
        SimulatedTalk talk = new SimulatedTalk(any, diagnoser, word, shop, (next, answers) -> {
            if (noted != null) {
                noted.asked(number, word, next.question().id(), answers);
            }
        });
        talk.run(SAYINGS);
        if (shop != null) {
            delete(shop);
        }
        return talk;
    }

    private static void delete(Path shop) {
        try (Stream<Path> all = Files.exists(shop) ? Files.walk(shop) : Stream.empty()) {
            for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(p);
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    @BeforeAll
    static void everybodyTalks() throws InterruptedException, ExecutionException {
        effects = new QuestionEffects(new Diagnoser(KNOWLEDGE));
        List<Generated> chances = Generated.tries(SEED, TALKS).toList();
        AtomicInteger next = new AtomicInteger();
        ExecutorService pool = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<?>> workers = new ArrayList<>();
            for (int t = 0; t < THREADS; t++) {
                workers.add(pool.submit(() -> {
                    Diagnoser own = new Diagnoser(KNOWLEDGE);
                    for (int n = next.getAndIncrement(); n < TALKS; n = next.getAndIncrement()) {
                        SimulatedTalk talk = talk(n, chances.get(n), own, effects);
                        synchronized (DIGESTS) {
                            if (n < AGAIN) {
                                DIGESTS.put(n, digest(talk.bytes()));
                            }
                            talk.faults().forEach(FAULTS::add);
                            ENDS.merge((talk.sittings() > 1 ? "resumed, " : "") + talk.end(), 1, Integer::sum);
                        }
                    }
                }));
            }
            for (Future<?> w : workers) {
                w.get();
            }
        } finally {
            pool.shutdownNow();
        }
    }

    @AfterAll
    static void forget() {
        DIGESTS.clear();
        FAULTS.clear();
        ENDS.clear();
        effects = null;
    }

    @Test
    void nobodyMeetsAFaultOrADeadEnd() {
        assertThat(FAULTS).as("%d faults", FAULTS.size()).isEmpty();
        assertThat(ENDS.keySet())
                .contains("ADVICE", "STOP", "UNFINISHED", "INTERRUPTED")
                .anyMatch(e -> e.startsWith("resumed, "));
    }

    @Test
    void everyQuestionAskedCanChangeSomething() {
        assertThat(effects.counts()).hasSizeGreaterThan(100);
        assertThat(effects.withoutEffect()).isEmpty();
    }

    /** Decimal commas, other digits, a dotless i and a quarter of an hour of time zone change no byte. */
    @ParameterizedTest
    @CsvSource({"de-DE, Europe/Berlin", "tr-TR, Asia/Kathmandu", "ar-EG-u-nu-arab, Pacific/Chatham"})
    void theSameSeedSaysTheSameAnywhere(String language, String zone) {
        Locale locale = Locale.getDefault();
        TimeZone before = TimeZone.getDefault();
        Locale.setDefault(Locale.forLanguageTag(language));
        TimeZone.setDefault(TimeZone.getTimeZone(zone));
        try {
            Diagnoser diagnoser = new Diagnoser(KNOWLEDGE);
            List<Generated> chances = Generated.tries(SEED, AGAIN).toList();
            for (int n = 0; n < Math.min(AGAIN, TALKS); n++) {
                assertThat(digest(talk(n, chances.get(n), diagnoser, null).bytes()))
                        .as("talk %d in %s", n, language)
                        .isEqualTo(DIGESTS.get(n));
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(before);
        }
    }
}
