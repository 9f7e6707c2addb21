package pourwright.units;

/** What a person typed, made safe to read and safe to show. */
public final class TypedText {
    /** Longer than any quantity; also the bound that keeps reading quick. */
    static final int LONGEST = 200;

    private static final int QUOTED = 40;

    private TypedText() {}

    /** Lower case, single spaces, plain quotes and signs. Independent of the machine's language. */
    static String clean(String typed) {
        StringBuilder out = new StringBuilder(typed.length());
        for (int i = 0; i < typed.length(); i++) {
            append(out, typed.charAt(i));
        }
        int end = out.length();
        return out.substring(0, end > 0 && out.charAt(end - 1) == ' ' ? end - 1 : end);
    }

    private static void append(StringBuilder out, char c) {
        switch (c) {
            case '−', '–', '—', '‐', '‑', '‒' -> out.append('-');
            case '′', '’', '‘', '´', '`' -> out.append('\'');
            case '″', '”', '“' -> out.append('"');
            case '⁄', '∕' -> out.append('/');
            case '℃' -> out.append("°c");
            case '℉' -> out.append("°f");
            case 'º', '˚' -> out.append('°');
            case '％' -> out.append('%');
            case '…' -> out.append("..");
            case '≈', '∼' -> out.append('~');
            case '×' -> out.append('x');
            case 'μ' -> out.append('µ');
            default -> {
                if (space(c)) {
                    if (out.length() > 0 && out.charAt(out.length() - 1) != ' ') {
                        out.append(' ');
                    }
                } else if (Character.isSurrogate(c) || !unseen(c)) {
                    out.append(Character.toLowerCase(c));
                }
            }
        }
    }

    /** The person's own text between quotes: nothing that moves a cursor or turns a line around, at most 40 characters. */
    public static String quote(String typed) {
        StringBuilder out = new StringBuilder("\"");
        int shown = 0;
        for (int i = 0; i < typed.length(); ) {
            int point = typed.codePointAt(i);
            i += Character.charCount(point);
            boolean blank = point < 0x10000 && space((char) point);
            if (!blank && unseen(point)) {
                continue;
            }
            if (shown == QUOTED) {
                return out.append("...\"").toString();
            }
            out.appendCodePoint(blank ? ' ' : point);
            shown++;
        }
        return out.append('"').toString();
    }

    private static boolean space(char c) {
        return c == ' ' || c == '\t' || c == '\n' || c == '\r' || Character.isSpaceChar(c);
    }

    /** Characters that show nothing but can do harm on a terminal, and halves of broken pairs. */
    private static boolean unseen(int c) {
        int type = Character.getType(c);
        return type == Character.CONTROL
                || type == Character.FORMAT
                || type == Character.PRIVATE_USE
                || type == Character.UNASSIGNED
                || type == Character.SURROGATE;
    }
}
