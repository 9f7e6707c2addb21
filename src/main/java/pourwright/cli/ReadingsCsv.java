package pourwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pourwright.advice.BadAnswer;

/**
 * Readings from a table: a column of times, one of pressures, their units in the header, and perhaps a column that says
 * {@code fall} or {@code rise}. It becomes the same text a person would have typed.
 */
final class ReadingsCsv {
    private static final int MOST_BYTES = 1_000_000;
    private static final int MOST_ROWS = 5000;
    /** More readings tell no more, and an answer of this many stays one that can be read. */
    private static final int KEPT = 50;

    private static final int LONGEST_CELL = 40;
    private static final int DIGITS = 5;
    private static final String EXAMPLE = " For example a header time s,pressure mbar and a row 30,400.";

    private final Path file;
    private int time = -1;
    private int pressure = -1;
    private int test = -1;
    private String timeUnit = "";
    private String pressureUnit = "";

    private ReadingsCsv(Path file) {
        this.file = file;
    }

    /**
     * The answers a table stands for: question id to text.
     *
     * @throws BadAnswer when it cannot be used, in one sentence
     */
    static Map<String, String> read(Path file) {
        return new ReadingsCsv(file).read();
    }

    private Map<String, String> read() {
        List<String> lines =
                text().lines().filter(l -> !l.isBlank()).limit(MOST_ROWS + 2L).toList();
        if (lines.size() < 2) {
            throw bad("holds no readings.");
        }
        if (lines.size() > MOST_ROWS + 1) {
            throw bad("has more than " + MOST_ROWS + " rows. Leave out most of them: a dozen tell as much.");
        }
        String separator = separator(lines.get(0));
        header(cells(lines.get(0), separator));
        Map<String, List<String[]>> tests = new LinkedHashMap<>();
        for (int i = 1; i < lines.size(); i++) {
            List<String> row = cells(lines.get(i), separator);
            if (row.size() <= Math.max(Math.max(time, pressure), test)) {
                throw bad("has too few columns in row " + (i + 1) + ".");
            }
            String of = test < 0 ? "fall" : row.get(test).toLowerCase(Locale.ROOT);
            if (!of.equals("fall") && !of.equals("rise")) {
                throw bad("says neither fall nor rise in row " + (i + 1) + ".");
            }
            tests.computeIfAbsent(of.equals("fall") ? "pump-down-readings" : "rise-readings", k -> new ArrayList<>())
                    .add(new String[] {number(row.get(time), i), number(row.get(pressure), i)});
        }
        Map<String, String> texts = new LinkedHashMap<>();
        tests.forEach((question, rows) -> texts.put(question, text(rows)));
        return texts;
    }

    private String text() {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw bad("is larger than one megabyte, too large for readings.");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString()
                    .replaceFirst("^\uFEFF", "");
        } catch (CharacterCodingException e) {
            throw bad("is not UTF-8 text.");
        } catch (IOException e) {
            throw bad("cannot be read.");
        }
    }

    private BadAnswer bad(String what) {
        return new BadAnswer("csv", "The table " + file + " " + what + EXAMPLE);
    }

    private static String separator(String header) {
        return header.contains("\t") ? "\t" : header.contains(";") ? ";" : ",";
    }

    private static List<String> cells(String line, String separator) {
        List<String> cells = new ArrayList<>();
        for (String cell : line.split(separator, -1)) {
            cells.add(cell.strip().replaceAll("^\"|\"$", "").strip());
        }
        return cells;
    }

    private void header(List<String> names) {
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i).toLowerCase(Locale.ROOT);
            if (name.startsWith("time") && time < 0) {
                time = i;
                timeUnit = unit(names.get(i), "time");
            } else if (name.startsWith("pressure") && pressure < 0) {
                pressure = i;
                pressureUnit = unit(names.get(i), "pressure");
            } else if (name.equals("test")) {
                test = i;
            }
        }
        if (time < 0 || pressure < 0) {
            throw bad("has no columns named time and pressure.");
        }
        if (timeUnit.isEmpty() || pressureUnit.isEmpty()) {
            throw bad("names no unit in its header.");
        }
    }

    private static String unit(String header, String word) {
        return header.substring(word.length())
                .replaceAll("[\\[\\]()_/,:]", " ")
                .replaceFirst("^\\s*in\\s+", " ")
                .strip();
    }

    private String number(String cell, int row) {
        String plain = cell.matches("[+-]?\\d+,\\d+") ? cell.replace(',', '.') : cell;
        if (cell.length() > LONGEST_CELL || !plain.matches("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d{1,2})?")) {
            throw bad("has something that is no number in row " + (row + 1) + ".");
        }
        // More digits than a gauge has say nothing and make a long answer.
        return new BigDecimal(plain)
                .round(new MathContext(DIGITS))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Thinned evenly, with the first and the last kept. */
    private String text(List<String[]> rows) {
        List<String> entries = new ArrayList<>();
        int count = Math.min(KEPT, rows.size());
        for (int i = 0; i < count; i++) {
            int at = count == 1 ? 0 : (int) Math.round((double) i * (rows.size() - 1) / (count - 1));
            String[] row = rows.get(at);
            entries.add(i == 0 ? row[0] + " " + timeUnit + " " + row[1] + " " + pressureUnit : row[0] + " " + row[1]);
        }
        return String.join("; ", entries);
    }
}
