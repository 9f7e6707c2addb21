package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pourwright.knowledge.KnowledgeFault;
import pourwright.knowledge.StockList;

/** The stock of a workshop: kept, changed and never lost. */
class StockCommandTest {
    private static final Path SCHEMAS = Path.of("knowledge/schemas");
    private static final String CAN =
            "{\"next\": 3, \"cans\": [{\"id\": 2, \"material\": \"tin-silicone\", \"part\": \"first\", \"left-kg\": 1.4%s}]}";

    @TempDir
    Path shop;

    private Ran stock(String... words) {
        return typing("", words);
    }

    private Ran typing(String typed, String... words) {
        return Ran.with(
                typed,
                Map.of(),
                Stream.of(new String[] {"stock"}, words, new String[] {"--shop", shop.toString()})
                        .flatMap(Stream::of)
                        .toArray(String[]::new));
    }

    private String file() throws IOException {
        return Files.readString(shop.resolve("stock.json"));
    }

    private void base() {
        assertThat(stock("add", "material=tin-silicone", "part=base", "left=3.2 kg", "price=48 EUR", "for=5 kg")
                        .code())
                .isZero();
    }

    @Test
    void aCanIsAddedUsedAndDropped() throws IOException {
        base();
        assertThat(stock().out()).contains("can 1: tin-silicone base, 3.2 kg, never opened, 9.60 EUR per kg");
        assertThat(stock("use", "1", "818 g").out()).contains("Opened today: can 1", "2.382 kg");
        assertThat(stock("use", "1", "1,382 g").out()).contains("can 1: tin-silicone base, 1 kg, opened today");
        assertThat(typing("drop 1\n", "drop", "1").out()).contains("Can 1 is off the list.");
        assertThat(StockList.read(shop, SCHEMAS)).isEqualTo(new StockList(2, java.util.List.of()));
    }

    @Test
    void thePartsOfAKilogramAddUpExactly() {
        base();
        // A tenth of a gram cannot be held exactly as a binary fraction: thirty-two thousand of them can be lost.
        for (int i = 0; i < 16; i++) {
            assertThat(stock("use", "1", "200 g").code()).isZero();
        }
        assertThat(stock().out()).contains("No can is kept");
    }

    @Test
    void moreThanThereIsCannotBeTaken() throws IOException {
        base();
        String before = file();
        Ran ran = stock("use", "1", "4 kg");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("Can 1 holds 3.2 kg, so 4 kg cannot come out of it. Nothing was changed");
        assertThat(file()).isEqualTo(before);
    }

    @Test
    void onlyTheWordsInFullDrop() throws IOException {
        base();
        String before = file();
        assertThat(typing("yes\n", "drop", "1").code()).isEqualTo(4);
        assertThat(stock("drop", "1", "--no-input").code()).isEqualTo(2);
        assertThat(file()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "add|Missing: material, left.",
                "add material=tin-silicone left=2kg|Missing: part.",
                "add material=tin-silicone part=lid left=2kg|part: \"lid\" is no can of tin silicone.",
                "add material=wood left=2kg|material: \"wood\" is no liquid known here.",
                "add material=latex part=second left=2kg|the stock of latex is one part",
                "add material=latex left=lots|left: \"lots\" is no weight.",
                "add material=latex left=0kg|left: an empty can is not kept.",
                "add material=latex left=2kg left=3kg|\"left\" stands twice.",
                "add colour=red|\"colour=red\" says nothing of a can.",
                "add material=latex left=2kg opened=soon|opened: \"soon\" is no day.",
                "add material=latex left=2kg opened=2026-02-30|opened: there is no day 2026-02-30.",
                "add material=latex left=2kg opened=2999-01-01|opened: 2999-01-01 is still to come",
                "add material=latex left=2kg opened=2024-01-01 bought=2025-01-01|a can cannot be opened on 2024-01-01",
                "add material=latex left=2kg price=48|price: \"48\" is no price.",
                "add material=latex left=2kg price=48EUR|for: say for how much 48EUR is",
                "add material=latex left=2kg for=5kg|for: it says for how much a price is.",
                "use 1|Say which can, and how much was taken",
                "use 7 2kg|No can has the number \"7\".",
                "set 1|Say which can, and what is so",
                "drop|Say which can",
                "borrow 1|\"borrow\" is not a word of the stock.",
            })
    void badInputIsOneSentenceAndChangesNothing(String words, String says) {
        Ran ran = stock(words.split(" "));
        assertThat(ran.code()).as(ran.toString()).isEqualTo(2);
        assertThat(ran.err()).contains(says).doesNotContain("Exception");
        assertThat(shop.resolve("stock.json")).doesNotExist();
    }

    /** What the schema refuses the reader refuses by itself, so that a conversation need not load the schemas. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                ", \"lid\": 1|'lid' is not known here",
                ", \"opened\": \"spring\"|/opened: expected a day",
                ", \"opened\": 3|/opened: expected a text",
                ", \"price\": 4|price, for-kg and currency stand together",
                ", \"price\": 0, \"for-kg\": 1, \"currency\": \"EUR\"|must be above zero",
                ", \"price\": 4, \"for-kg\": 1, \"currency\": \"long-winded\"|/currency: expected a word",
            })
    void aFileIsReadStrictly(String more, String says) throws IOException {
        Files.writeString(shop.resolve("stock.json"), CAN.replace("%s", more));
        refused(says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{|line 1: not valid JSON",
                "{\"next\": 1}|/cans: expected a list of cans",
                "{\"next\": 0, \"cans\": []}|/next: expected a whole number",
                "{\"cans\": []}|'next' is missing",
                "{\"next\": 2, \"cans\": [{\"id\": 1, \"material\": \"Tin!\", \"part\": \"first\", \"left-kg\": 1}]}|/material: expected",
                "{\"next\": 2, \"cans\": [{\"id\": 1, \"material\": \"wax\", \"part\": \"lid\", \"left-kg\": 1}]}|/part: expected",
                "{\"next\": 2, \"cans\": [{\"id\": 1, \"material\": \"wax\", \"part\": \"whole\", \"left-kg\": -1}]}|/left-kg: expected",
            })
    void aBrokenFileIsNamedWithThePlace(String text, String says) throws IOException {
        Files.writeString(shop.resolve("stock.json"), text);
        refused(says);
    }

    private void refused(String says) throws IOException {
        assertThatThrownBy(() -> StockList.read(shop, null))
                .isInstanceOf(KnowledgeFault.class)
                .hasMessageContaining("stock.json")
                .hasMessageContaining(says);
        assertThatThrownBy(() -> StockList.read(shop, SCHEMAS)).isInstanceOf(KnowledgeFault.class);
        String before = file();
        Ran ran = stock("add", "material=latex", "left=2kg");
        assertThat(ran.code()).as(ran.toString()).isEqualTo(2);
        assertThat(file()).isEqualTo(before);
    }

    @Test
    void aConversationTakesTheStockOverOnceConfirmed() {
        base();
        stock("add", "material=tin-silicone", "part=catalyst", "left=40 g", "opened=240 d");
        Ran ran = Ran.with(
                "\nenough\n\nstock\nquit\n",
                Map.of(),
                "plan",
                "material=tin-silicone",
                "mix-ratio=100:5 by weight",
                "batch-mass=1.05 kg",
                "--shop",
                shop.toString());
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("In stock (Enter = yes, or \"no\"): base 3.2 kg in 1 can, never opened; catalyst 40 g in 1")
                .contains("40 g of catalyst, and this mix takes 50 g: 10 g are missing")
                .contains("base: 1,000 g from can 1, which leaves 2,200 g. catalyst: 40 g from can 2")
                // What cannot be mixed as planned is not taken off the list either.
                .doesNotContain("pourwright stock use");
    }

    @Test
    void theLinesAfterAPlanBringTheStockUpToDate() {
        base();
        stock("add", "material=tin-silicone", "part=catalyst", "left=90 g");
        Ran ran = Ran.with(
                "\nenough\nstock\nquit\n",
                Map.of(),
                "plan",
                "material=tin-silicone",
                "mix-ratio=100:5 by weight",
                "batch-mass=1.05 kg",
                "--shop",
                shop.toString());
        assertThat(ran.out())
                .contains("  pourwright stock use 1 \"1,000 g\" --shop \"" + shop + "\"")
                .contains("  pourwright stock use 2 \"50 g\" --shop \"" + shop + "\"");
        assertThat(stock("use", "1", "1,000 g").out()).contains("2.2 kg");
        assertThat(stock("use", "2", "50 g").out()).contains("40 g");
    }

    @Test
    void whoeverKeepsNoStockIsAskedNothingOfIt() {
        Ran ran = Ran.with("enough\nquit\n", Map.of(), "plan", "material=tin-silicone", "--shop", shop.toString());
        assertThat(ran.out()).doesNotContain("In stock").doesNotContain("cans > ");
    }
}
