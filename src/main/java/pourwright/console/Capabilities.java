package pourwright.console;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jline.utils.InfoCmp;

/**
 * What the kinds of terminal can do that the line editor's library knows by heart. These are its own two tables; only the
 * reading is ours, since its way asks another program first and builds some hundred regular expressions at every start.
 */
public final class Capabilities {
    private static final String NAMES = "capabilities.txt";
    private static final String BETWEEN = ", ";

    private Capabilities() {}

    /**
     * Adds what a terminal of this type can do.
     *
     * @param type as the environment names it
     * @param bools what it has
     * @param ints its numbers
     * @param strings what it sends and takes
     * @return false when the library does not know this type by heart; nothing was added
     */
    public static boolean known(
            String type,
            Set<InfoCmp.Capability> bools,
            Map<InfoCmp.Capability, Integer> ints,
            Map<InfoCmp.Capability, String> strings) {
        String text = type == null ? null : InfoCmp.getDefaultInfoCmp(type);
        if (text == null) {
            return false;
        }
        Map<String, String> values = values(text);
        for (String line : names().split("\n")) {
            int end = line.indexOf(BETWEEN);
            if (end <= 0 || line.charAt(0) == '#') {
                continue;
            }
            String name = line.substring(0, end);
            String shortName = line.substring(end + BETWEEN.length(), line.indexOf(BETWEEN, end + BETWEEN.length()));
            String value = values.getOrDefault(shortName, values.get(name));
            if (value == null) {
                continue;
            }
            InfoCmp.Capability capability = InfoCmp.Capability.valueOf(name);
            if (value.isEmpty()) {
                bools.add(capability);
            } else if (value.charAt(0) == '#') {
                ints.put(capability, Integer.decode(value.substring(1)));
            } else {
                strings.put(capability, value.substring(1));
            }
        }
        return true;
    }

    /** Names of what stands in a description, each with "=TEXT", "#NUMBER" or nothing; the first line is a heading. */
    private static Map<String, String> values(String text) {
        Map<String, String> values = new HashMap<>();
        for (int at = text.indexOf('\n') + 1; at > 0 && at < text.length(); ) {
            int end = text.indexOf(',', at);
            if (end < 0) {
                break;
            }
            String item = text.substring(at, end).strip();
            int name = 0;
            while (name < item.length() && item.charAt(name) != '=' && item.charAt(name) != '#') {
                name++;
            }
            values.put(item.substring(0, name), item.substring(name));
            at = end + 1;
        }
        return values;
    }

    private static String names() {
        try (InputStream in = InfoCmp.class.getResourceAsStream(NAMES)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
