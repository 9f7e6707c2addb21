package pourwright.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is used and what is left is what was there; the oldest can that suffices goes first. */
class CanUseTest {
    private static final double DAY_S = 86_400;
    private static final int TRIES = 2_000;

    private static List<Can> cans(Random r) {
        List<Can> all = new ArrayList<>();
        int n = 1 + r.nextInt(6);
        for (int i = 0; i < n; i++) {
            OptionalDouble open = r.nextBoolean() ? OptionalDouble.of(r.nextInt(900) * DAY_S) : OptionalDouble.empty();
            OptionalDouble bought =
                    r.nextBoolean() ? OptionalDouble.of(r.nextInt(900) * DAY_S) : OptionalDouble.empty();
            all.add(new Can(
                    Integer.toString(i + 1),
                    (1 + r.nextInt(5000)) / 1000.0,
                    open,
                    bought,
                    OptionalDouble.empty(),
                    Optional.of(new Can.Price((1 + r.nextInt(9000)) / 100.0, "EUR"))));
        }
        return all;
    }

    @Test
    void whatIsUsedAndWhatIsLeftIsWhatWasThere() {
        Random r = new Random(20261126);
        for (int i = 0; i < TRIES; i++) {
            List<Can> cans = cans(r);
            double there = cans.stream().mapToDouble(Can::massKg).sum();
            double need = r.nextDouble() * there * 1.5;
            CanUse use = CanUse.of(cans, need);
            double used = use.taken().stream().mapToDouble(CanUse.Taken::kg).sum();
            double left = cans.stream()
                    .mapToDouble(c -> c.massKg()
                            - use.taken().stream()
                                    .filter(t -> t.can().equals(c))
                                    .mapToDouble(CanUse.Taken::kg)
                                    .sum())
                    .sum();
            assertThat(used + left).as("try " + i).isCloseTo(there, within(1e-9));
            assertThat(used + use.shortKg()).as("try " + i).isCloseTo(need, within(1e-8));
            assertThat(use.taken())
                    .allMatch(t -> t.kg() > 0 && t.kg() <= t.can().massKg());
        }
    }

    @Test
    void noOlderCanThatSufficesIsLeftUntouched() {
        Random r = new Random(7);
        for (int i = 0; i < TRIES; i++) {
            List<Can> cans = cans(r);
            double need = 0.001 + r.nextDouble() * 4;
            CanUse use = CanUse.of(cans, need);
            List<Can> order = CanUse.oldestFirst(cans);
            Optional<Can> oldestEnough =
                    order.stream().filter(c -> c.massKg() >= need).findFirst();
            if (oldestEnough.isPresent()) {
                assertThat(use.taken()).as("try " + i).hasSize(1);
                assertThat(use.taken().get(0).can()).as("try " + i).isEqualTo(oldestEnough.get());
            } else {
                // One after another: all but the last are emptied.
                assertThat(use.taken().subList(0, use.taken().size() - 1)).allMatch(CanUse.Taken::all);
                assertThat(use.taken().stream().map(CanUse.Taken::can))
                        .isEqualTo(order.subList(0, use.taken().size()));
            }
        }
    }

    @Test
    void theCostsOfTheCansAreTheCostOfAll() {
        Random r = new Random(11);
        for (int i = 0; i < TRIES; i++) {
            List<Can> cans = cans(r);
            double there = cans.stream().mapToDouble(Can::massKg).sum();
            // Reckoned otherwise: everything there at its price, less what is left at its price.
            CanUse use = CanUse.of(cans, r.nextDouble() * there);
            double all = cans.stream()
                    .mapToDouble(c -> c.massKg() * c.price().orElseThrow().perKg())
                    .sum();
            double left = cans.stream()
                    .mapToDouble(c -> (c.massKg()
                                    - use.taken().stream()
                                            .filter(t -> t.can().equals(c))
                                            .mapToDouble(CanUse.Taken::kg)
                                            .sum())
                            * c.price().orElseThrow().perKg())
                    .sum();
            assertThat(use.cost().orElseThrow()).as("try " + i).isCloseTo(all - left, within(1e-6));
        }
    }

    @Test
    void anOpenCanGoesBeforeOneThatWasBoughtEarlier() {
        List<Can> cans = Cans.read("1: 2 kg, bought 800 d; 2: 2 kg, open 3 d; 3: 2 kg, open 90 d");
        assertThat(CanUse.oldestFirst(cans).stream().map(Can::name)).containsExactly("3", "2", "1");
    }

    @Test
    void differentMoneyIsNeverAdded() {
        assertThat(CanUse.of(Cans.read("1: 1 kg, 10 EUR per kg; 2: 1 kg, 10 USD per kg"), 1.5)
                        .cost())
                .isEmpty();
        assertThat(CanUse.of(Cans.read("1: 1 kg, 10 EUR per kg; 2: 1 kg, 10 EUR per kg"), 1.5)
                        .cost())
                .contains(15.0);
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        Random r = new Random(3);
        for (int i = 0; i < TRIES; i++) {
            List<Can> cans = cans(r);
            assertThat(Cans.read(Cans.text(cans))).isEqualTo(cans);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3: bananas|\"bananas\" is not a weight of a can.",
                "3: 0 g|\"3: 0 g\" holds nothing.",
                "3: 4 kg, open 2 kg|\"2 kg\" is not a time of a can.",
                "3: 4 kg, old|\"old\" says nothing of a can.",
                "3: 4 kg, open 2 d, opened 3 d|says \"open\" twice.",
                "3: 4 kg; 3: 2 kg|Two cans are called \"3\".",
                "3: 4 kg;|\"\" is not a weight of a can.",
                "3: 4 kg, 0 EUR per kg|\"0 EUR per kg\" says nothing of a can.",
            })
    void whatCannotBeReadIsNamedWithWhatCan(String typed, String says) {
        assertThatThrownBy(() -> Cans.read(typed))
                .isInstanceOf(Cans.Unreadable.class)
                .hasMessageContaining(says)
                .hasMessageContaining("Accepted: a weight");
    }
}
