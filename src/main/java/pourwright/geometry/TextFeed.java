package pourwright.geometry;

import java.nio.charset.StandardCharsets;

/**
 * Words of a text file, one at a time with the number of their line. Words are kept as bytes, and plain numbers are read
 * without making a string: a text mesh is millions of numbers.
 */
final class TextFeed {
    /** No word of a mesh file is longer; a longer one is not text. */
    private static final int LONGEST_WORD = 1024;

    /** Powers of ten that a double holds exactly. */
    private static final double[] TENS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };

    /** Digits beyond which the plain way of reading a number would round twice. */
    private static final long EXACT_DIGITS = 1L << 53;

    /** So many digits tell every 32-bit number apart. */
    private static final int FLOAT_DIGITS = 9;

    private final ByteFeed bytes;
    private final boolean joinLines;
    private final byte[] word = new byte[LONGEST_WORD];
    private int length;
    private int line = 1;
    private int wordLine = 1;
    private int pushed = -2;

    /**
     * Reads words.
     *
     * @param joinLines whether a backslash at the end of a line joins it with the next
     */
    TextFeed(ByteFeed bytes, boolean joinLines) {
        this.bytes = bytes;
        this.joinLines = joinLines;
    }

    int line() {
        return wordLine;
    }

    private int take() {
        if (pushed != -2) {
            int c = pushed;
            pushed = -2;
            return c;
        }
        return bytes.read();
    }

    /** Steps to the next word anywhere; false at the end of the file. */
    boolean nextWord() {
        while (true) {
            if (nextInLine()) {
                return true;
            }
            if (!endLine()) {
                return false;
            }
        }
    }

    /** Steps to the next word on this line; false where the line ends. */
    boolean nextInLine() {
        length = 0;
        int c = take();
        while (c == ' ' || c == '\t' || c == '\r' || c == 0x0B || c == '\f' || (c == '\\' && joinLines)) {
            if (c == '\\') {
                int after = take();
                while (after == '\r' || after == ' ' || after == '\t') {
                    after = take();
                }
                if (after == '\n') {
                    line++;
                } else {
                    pushed = after;
                    length = 1;
                    word[0] = '\\';
                    wordLine = line;
                    return true;
                }
            }
            c = take();
        }
        wordLine = line;
        if (c == '\n' || c < 0) {
            pushed = c;
            return false;
        }
        while (c > ' ' && !(c == '\\' && joinLines)) {
            if (length == LONGEST_WORD) {
                throw new MeshFault("Line " + line + " holds a word of over " + LONGEST_WORD
                        + " characters, so this is not a text mesh.");
            }
            word[length++] = (byte) c;
            c = take();
        }
        if (c >= 0 && c < ' ' && c != '\n' && c != '\t' && c != '\r' && c != 0x0B && c != '\f') {
            throw new MeshFault("Line " + line + " holds a byte that is not text.");
        }
        pushed = c;
        return true;
    }

    /** Takes the rest of the line and its end; false when the file ended. */
    boolean endLine() {
        int c = take();
        while (c != '\n' && c >= 0) {
            c = take();
        }
        if (c < 0) {
            pushed = c;
            return false;
        }
        line++;
        return true;
    }

    /** Whether the word is this one, in upper or lower case. */
    boolean is(String expected) {
        if (length != expected.length()) {
            return false;
        }
        for (int i = 0; i < length; i++) {
            int c = word[i];
            int lower = c >= 'A' && c <= 'Z' ? c + 32 : c;
            if (lower != expected.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** The word as text, with anything but plain characters replaced, at most 40 of them. */
    String text() {
        String all = new String(word, 0, Math.min(length, 40), StandardCharsets.ISO_8859_1);
        return all.replaceAll("[^ -~]", "?");
    }

    byte byteAt(int index) {
        return word[index];
    }

    int length() {
        return length;
    }

    /**
     * The word as a coordinate. One of at most nine digits is a 32-bit number written out, and is taken as that number, so
     * that a text file and a binary file of the same part give the same mesh to the last digit.
     */
    double coordinate() {
        double value = number();
        int digits = 0;
        boolean leading = true;
        for (int i = 0; i < length && word[i] != 'e' && word[i] != 'E'; i++) {
            boolean digit = word[i] >= '0' && word[i] <= '9';
            leading &= !digit || word[i] == '0';
            digits += digit && !leading ? 1 : 0;
        }
        return digits <= FLOAT_DIGITS && Math.abs(value) <= Float.MAX_VALUE ? (float) value : value;
    }

    /** The word as a number. */
    double number() {
        return number(length);
    }

    private double number(int stop) {
        int at = 0;
        boolean negative = false;
        if (at < stop && (word[at] == '-' || word[at] == '+')) {
            negative = word[at] == '-';
            at++;
        }
        long digits = 0;
        int scale = 0;
        int seen = 0;
        boolean point = false;
        for (; at < stop; at++) {
            int c = word[at];
            if (c == '.' && !point) {
                point = true;
            } else if (c >= '0' && c <= '9') {
                seen++;
                if (digits < EXACT_DIGITS / 16) {
                    digits = digits * 10 + (c - '0');
                    scale -= point ? 1 : 0;
                } else {
                    return slowNumber(stop);
                }
            } else {
                break;
            }
        }
        if (seen == 0) {
            return slowNumber(stop);
        }
        if (at < stop) {
            int exponent = exponent(at, stop);
            if (exponent == Integer.MIN_VALUE) {
                return slowNumber(stop);
            }
            scale += exponent;
        }
        if (Math.abs(scale) >= TENS.length) {
            return slowNumber(stop);
        }
        // Both are exact here, so one multiplication or division rounds once and is the nearest number.
        double value = scale < 0 ? digits / TENS[-scale] : digits * TENS[scale];
        return negative ? -value : value;
    }

    private int exponent(int from, int stop) {
        int at = from;
        if (word[at] != 'e' && word[at] != 'E') {
            return Integer.MIN_VALUE;
        }
        at++;
        boolean negative = false;
        if (at < stop && (word[at] == '-' || word[at] == '+')) {
            negative = word[at] == '-';
            at++;
        }
        if (at == stop || stop - at > 4) {
            return Integer.MIN_VALUE;
        }
        int value = 0;
        for (; at < stop; at++) {
            if (word[at] < '0' || word[at] > '9') {
                return Integer.MIN_VALUE;
            }
            value = value * 10 + (word[at] - '0');
        }
        return negative ? -value : value;
    }

    private double slowNumber(int stop) {
        String text = new String(word, 0, stop, StandardCharsets.ISO_8859_1);
        String lower = text.toLowerCase(java.util.Locale.ROOT);
        if (lower.matches("[+-]?(nan|inf|infinity)(\\(.*\\))?") || lower.contains("1.#")) {
            return Double.NaN;
        }
        // The library would also take hexadecimal numbers and a trailing d or f, which no mesh file means.
        if (text.matches("[+-]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][+-]?[0-9]+)?")) {
            return Double.parseDouble(text);
        }
        throw new MeshFault(
                "Line " + wordLine + ": " + text() + " is not a number; use a point for decimals, as in 12.5.");
    }
}
