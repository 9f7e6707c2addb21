package pourwright.units;

/** A place in a cleaned text. */
final class Cursor {
    final String text;
    int at;

    Cursor(String text) {
        this.text = text;
    }

    boolean done() {
        return at >= text.length();
    }

    /** The character {@code ahead} places on, or 0 past the end. */
    char peek(int ahead) {
        int i = at + ahead;
        return i >= 0 && i < text.length() ? text.charAt(i) : 0;
    }

    void spaces() {
        while (peek(0) == ' ') {
            at++;
        }
    }

    /** Takes the mark if it stands here, spaces before it allowed. */
    boolean mark(String mark) {
        int from = at;
        spaces();
        if (text.startsWith(mark, at)) {
            at += mark.length();
            return true;
        }
        at = from;
        return false;
    }

    /** Takes the whole word or words if they stand here, spaces before allowed, no letter after. */
    boolean word(String word) {
        int from = at;
        if (mark(word) && !Character.isLetter(peek(0))) {
            return true;
        }
        at = from;
        return false;
    }

    /** The first of these words that stands here, taken; or null. */
    String oneOf(String[] words) {
        for (String w : words) {
            if (word(w)) {
                return w;
            }
        }
        return null;
    }

    /** What is left, without spaces at its ends. */
    String rest() {
        return text.substring(Math.min(at, text.length())).strip();
    }

    static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }
}
