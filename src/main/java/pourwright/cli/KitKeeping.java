package pourwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import pourwright.advice.BadAnswer;
import pourwright.casebook.KitHistory;
import pourwright.casebook.ShopLock;
import pourwright.console.KitLog;
import pourwright.kit.KitAdvice;
import pourwright.kitfit.KitDrift;

/**
 * Keeps the tests of one run in the workshop's folder. What is shown again in the same conversation replaces what was shown
 * before, so that a corrected answer leaves no second test behind.
 */
final class KitKeeping implements KitLog {
    private final Path shop;
    private final String date;
    private final boolean writes;
    private final boolean talks;
    private KitHistory before;

    /**
     * @param shop   the workshop's folder
     * @param date   day of the test, as 2026-03-01
     * @param writes whether the test is kept, or only held against what was kept
     * @param talks  whether a person is there to be told of trouble; else trouble is bad input
     */
    KitKeeping(Path shop, String date, boolean writes, boolean talks) {
        this.shop = shop;
        this.date = date;
        this.writes = writes;
        this.talks = talks;
    }

    /** A conversation holds the folder already; whoever does not talk takes it for as long as the writing lasts. */
    private void alone(KitHistory all) throws IOException {
        Files.createDirectories(shop);
        Optional<ShopLock> free = ShopLock.take(shop);
        if (free.isEmpty()) {
            throw new BadAnswer(
                    "keep", "Another console is open in " + shop + ". Close that one first, then keep the test.");
        }
        ShopLock held = free.get();
        try {
            all.write();
        } finally {
            held.close();
        }
    }

    @Override
    public Past keep(KitAdvice advice) {
        try {
            if (before == null || !talks) {
                before = KitHistory.read(shop);
            }
            KitHistory all = advice.measured() ? before.with(advice, date) : before;
            boolean kept = writes && advice.measured();
            if (kept && talks) {
                all.write();
            } else if (kept) {
                alone(all);
            }
            int tests = all.tests().size();
            return new Past(
                    tests == 0 ? Optional.empty() : Optional.of(KitDrift.of(all.tests())),
                    tests,
                    kept ? "Kept as the test of " + date + "." : "");
        } catch (IOException e) {
            String trouble = "The tests of this kit in " + shop
                    + " cannot be kept: is there such a folder, can it be read, and is there room?";
            if (talks) {
                return new Past(Optional.empty(), 0, trouble);
            }
            throw new BadAnswer("keep", trouble);
        }
    }
}
