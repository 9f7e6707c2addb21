package pourwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import pourwright.advice.BadAnswer;
import pourwright.advice.Consultation;
import pourwright.casebook.Trouble;
import pourwright.casebook.WholeFile;
import pourwright.console.CardPage;
import pourwright.knowledge.Knowledge;
import pourwright.sheet.Card;
import pourwright.sheet.CardFit;
import pourwright.sheet.CardHtml;
import pourwright.sheet.PlanCard;

/** Writes cards: HTML or text, as the name of the file ends; over a file that is there, as sheets do. */
final class CardFile {
    private CardFile() {}

    /** What a person typed after "card" in a conversation: a file, and the title after it. Says what became of it. */
    static String typed(Consultation c, String rest, Knowledge knowledge, String version) {
        String[] parts = rest.strip().split("\\s+", 2);
        try {
            if (parts[0].isEmpty()) {
                throw new BadAnswer("card", "Say where it goes, for example \"card ear.html Left ear\".");
            }
            return write(PlanCard.of(c, knowledge, title(parts.length > 1 ? parts[1] : ""), version), file(parts[0]));
        } catch (BadAnswer e) {
            return e.getMessage();
        }
    }

    /**
     * The name of a file that can hold a card.
     *
     * @throws BadAnswer when it does not end in .html or .txt
     */
    static Path file(String name) {
        try {
            return SheetFile.file(name);
        } catch (BadAnswer e) {
            throw new BadAnswer("card", e.getMessage().replace("A sheet goes", "A card goes"));
        }
    }

    /** @throws BadAnswer when it is too long */
    static String title(String title) {
        return SheetFile.title(title);
    }

    /**
     * Writes it.
     *
     * @return what became of it, in a sentence
     * @throws BadAnswer when the file cannot be written
     */
    static String write(Card card, Path file) {
        boolean text = file.toString().toLowerCase(Locale.ROOT).endsWith(".txt");
        try {
            WholeFile.write(file, text ? String.join("\n", CardPage.lines(card)) + "\n" : CardHtml.of(card));
        } catch (IOException e) {
            throw new BadAnswer("card", "The card " + file + " cannot be written: " + Trouble.why(file, e) + ".");
        }
        int pages = CardFit.pages(card).size();
        return "The card is in " + file + (pages == 1 ? ", on one page." : ", on " + pages + " pages.")
                + " Print it, or open it " + (text ? "as text." : "in a browser.");
    }
}
