package pourwright.console;

/** Takes out what could steer a terminal: what people typed or files hold is shown, never obeyed. */
public final class Clean {
    private static final int SHORT = 40;

    private Clean() {}

    /** The text without control and format characters. */
    public static String text(String text) {
        for (int i = 0; i < text.length(); i++) {
            int type = Character.getType(text.charAt(i));
            if ((type == Character.CONTROL || type == Character.FORMAT) && text.charAt(i) != '\n') {
                return text.replaceAll("[\\p{Cc}\\p{Cf}&&[^\n]]", " ");
            }
        }
        return text;
    }

    /** The same, cut to what a sentence can quote. */
    public static String quoted(String text) {
        String plain = text.length() > SHORT ? text.substring(0, SHORT) + "…" : text;
        return text(plain).replace('\n', ' ');
    }
}
