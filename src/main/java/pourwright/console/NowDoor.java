package pourwright.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import pourwright.knowledge.Emergency;

/**
 * A door at which {@code now foam at the rim} gets help at every prompt, whatever is being asked. The same is asked again
 * afterwards, and nothing is taken for an answer.
 */
public final class NowDoor extends DoorAround {
    private static final String WORD = "now";

    private final Supplier<List<Emergency>> emergencies;

    /**
     * @param door the way to the person
     * @param emergencies what to look in; asked for only when somebody needs it
     */
    public NowDoor(Door door, Supplier<List<Emergency>> emergencies) {
        super(door);
        this.emergencies = emergencies;
    }

    @Override
    public String ask(String prompt, List<String> words) {
        List<String> offered = new ArrayList<>(words);
        if (!offered.contains(WORD)) {
            offered.add(WORD);
        }
        while (true) {
            String line = door.ask(prompt, offered);
            String typed = line.strip();
            boolean now = typed.toLowerCase(Locale.ROOT).equals(WORD)
                    || typed.toLowerCase(Locale.ROOT).startsWith(WORD + " ");
            if (!now) {
                return line;
            }
            NowPage.lines(emergencies.get(), typed.substring(WORD.length()).strip(), door.width())
                    .forEach(door::say);
        }
    }
}
