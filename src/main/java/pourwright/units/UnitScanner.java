package pourwright.units;

/** Finds the longest unit that stands at a place in the text. */
final class UnitScanner {
    /** Spaces, dots and hyphens inside a spelling do not count towards its key; this many are allowed for. */
    private static final int SLACK = 6;

    private UnitScanner() {}

    /** What the text at a place can mean, and how far it reaches. */
    record Match(UnitDef[] units, String key, int end) {}

    /** The longest unit at the cursor, spaces before it allowed; null, cursor unmoved, if there is none. */
    static Match match(Cursor c, Dimension wanted) {
        int from = c.at;
        c.spaces();
        Match found = at(c.text, c.at, wanted);
        c.at = found == null ? from : found.end();
        return found;
    }

    private static Match at(String text, int from, Dimension wanted) {
        int longest = Math.min(text.length(), from + UnitTable.LONGEST + SLACK);
        int limit = from;
        while (limit < longest && !stops(text, from, limit)) {
            limit++;
        }
        for (int end = limit; end > from; end--) {
            if (!mayEnd(text, end)) {
                continue;
            }
            String key = Spelling.key(text.substring(from, end));
            UnitDef[] units = UnitTable.BY_KEY.get(key);
            // 5ft3 is five foot three to whoever is asked for a length.
            boolean feetAndInches = wanted == Dimension.LENGTH && key.equals("ft3") && text.charAt(end - 1) == '3';
            if (units != null && !key.isEmpty() && !feetAndInches) {
                return new Match(units, key, end);
            }
        }
        return rare(text, from, limit, wanted);
    }

    /** A word that the table does not hold but that the units library reads in the wanted dimension. */
    private static Match rare(String text, int from, int limit, Dimension wanted) {
        int end = from;
        while (end < limit && text.charAt(end) != ' ' && text.charAt(end) != '\u00a0') {
            end++;
        }
        String word = text.substring(from, end);
        return RareUnits.find(word, wanted)
                .map(u -> new Match(new UnitDef[] {u}, word, from + word.length()))
                .orElse(null);
    }

    /** Two dots are a range, and a digit is part of a unit only as a power right behind a letter: "m3", "m^3". */
    private static boolean stops(String text, int from, int i) {
        char c = text.charAt(i);
        char next = i + 1 < text.length() ? text.charAt(i + 1) : 0;
        if (Cursor.digit(c)) {
            return i == from || !(Character.isLetter(text.charAt(i - 1)) || text.charAt(i - 1) == '^');
        }
        return c == '.' && (next == '.' || i == from);
    }

    private static boolean mayEnd(String text, int end) {
        char last = text.charAt(end - 1);
        char next = end < text.length() ? text.charAt(end) : 0;
        if (last == ' ' || last == '-' || last == '*' || last == '·' || last == '_' || last == '^') {
            return false;
        }
        if (last == '.' && end >= 2 && text.charAt(end - 2) == ' ') {
            return false;
        }
        if (Cursor.digit(last) || last == '³' || last == '²') {
            return !Cursor.digit(next) && !Character.isLetter(next);
        }
        return !(Character.isLetter(last) || last == '.') || !Character.isLetter(next);
    }
}
