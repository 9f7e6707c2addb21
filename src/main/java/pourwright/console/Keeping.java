package pourwright.console;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import pourwright.casebook.AnswersJson;
import pourwright.casebook.Journal;
import pourwright.casebook.Kit;
import pourwright.casebook.ShopLock;
import pourwright.casebook.Trouble;
import pourwright.facts.Answers;
import pourwright.knowledge.Knowledge;

/**
 * Keeps a conversation in the workshop's folder while it lasts. Whatever goes wrong there costs the safety net, never the
 * conversation: it ends in one sentence, and what stood in the folder stands as it was.
 */
final class Keeping implements AutoCloseable {
    private final Path shop;
    private final Knowledge knowledge;
    private final AnswersJson reader;
    private final Consumer<String> say;
    private final Journal journal;
    private ShopLock lock;
    private State state = State.NOWHERE;
    private boolean ours;

    /** Whether answers are kept now. */
    private enum State {
        /** There is no folder to keep them in, or not yet. */
        NOWHERE,
        /** Another console keeps its conversation in the folder. */
        ELSEWHERE,
        /** Another conversation stands in the journal; it is left alone until there is an answer to keep, and then set aside. */
        WAITING,
        /** Every answer so far is on disk. */
        KEPT,
        /** The folder cannot be written; each answer tries again. */
        TROUBLE
    }

    /** Work on files that may fail. */
    @FunctionalInterface
    private interface Work {
        void run() throws IOException;
    }

    /**
     * @param shop the workshop's folder, or null to keep nothing on disk
     * @param word what the conversation is about
     * @param say where sentences go
     */
    Keeping(Path shop, String word, Knowledge knowledge, Consumer<String> say) {
        this.shop = shop;
        this.knowledge = knowledge;
        this.reader = new AnswersJson(knowledge);
        this.say = say;
        this.journal = shop == null ? null : new Journal(shop, word);
    }

    /** Begins to keep. */
    void begin(Answers answers) {
        if (shop == null) {
            return;
        }
        try {
            open(answers);
        } catch (IOException e) {
            trouble(e);
        }
    }

    private void open(Answers answers) throws IOException {
        if (!taken()) {
            state = State.ELSEWHERE;
            say.accept("Another console is open in " + shop
                    + ", so the answers here are not kept. To have them kept, close that one first and start anew.");
            return;
        }
        journal.sweep();
        Journal.Standing standing = Journal.standing(shop);
        if (!ours && !standing.ids().isEmpty() && !journal.isGoneOnWith(answers, reader)) {
            state = State.WAITING;
            int n = standing.ids().size();
            say.accept(
                    "An unfinished " + Job.called(standing.word()) + " with " + n
                            + (n == 1 ? " answer" : " answers") + " stands in " + shop
                            + ". The first answer here sets it aside under another name; \"quit\" leaves it for \"pourwright resume\".");
            return;
        }
        int unread = ours ? 0 : journal.unread(reader);
        if (unread > 0) {
            Path aside = journal.setAside();
            say.accept("Part of the unfinished conversation in " + shop
                    + " cannot be read. What is missing is asked again; the file is kept as " + aside.getFileName()
                    + ".");
        }
        journal.begin(answers);
        state = State.KEPT;
        ours = true;
    }

    private boolean taken() throws IOException {
        if (lock != null) {
            return true;
        }
        makeFolder();
        Optional<ShopLock> free = ShopLock.take(shop);
        lock = free.orElse(null);
        return free.isPresent();
    }

    /** Makes the folder and the one above it, as in ~/.config/pourwright; a home that is not there is not made up. */
    private void makeFolder() throws IOException {
        Path above = shop.toAbsolutePath().getParent();
        Path top = above == null || above.getParent() == null ? above : above.getParent();
        if (top != null && !Files.exists(top)) {
            throw new NoSuchFileException(top.toString());
        }
        Files.createDirectories(shop);
    }

    /** Keeps an answer; on disk when this returns, or the person was told. */
    void set(String id, Object raw, Answers now) {
        if (state == State.WAITING) {
            makeRoom(now);
        } else {
            keep(() -> journal.set(id, raw), now);
        }
    }

    /** Sets the conversation of before aside, so that this one can be kept. */
    private void makeRoom(Answers now) {
        Path aside;
        try {
            aside = Journal.putAside(shop);
        } catch (IOException e) {
            trouble(e);
            return;
        }
        say.accept("The unfinished conversation of before is kept as " + aside.getFileName() + " in " + shop
                + ". Named " + Journal.FILE + " again, it can be resumed.");
        wholly(now);
    }

    /** Keeps that an answer was taken back. */
    void unset(String id, Answers now) {
        keep(() -> journal.unset(id), now);
    }

    private void keep(Work line, Answers now) {
        if (state == State.KEPT) {
            try {
                line.run();
            } catch (IOException e) {
                // Half a line, or a file that has gone: written whole, nothing is missing.
                wholly(now);
            }
        } else if (state == State.TROUBLE) {
            try {
                open(now);
                if (state == State.KEPT) {
                    say.accept("Answers are kept again in " + shop + ", with all that were given before.");
                }
            } catch (IOException e) {
                // The person knows; the next answer tries again.
                state = State.TROUBLE;
            }
        }
    }

    private void wholly(Answers now) {
        try {
            journal.begin(now);
            state = State.KEPT;
            ours = true;
        } catch (IOException e) {
            trouble(e);
        }
    }

    private void trouble(IOException e) {
        state = State.TROUBLE;
        say.accept("Answers cannot be kept in " + shop + ": " + Trouble.why(shop, e)
                + ". The conversation goes on and each answer tries again; \"--shop DIR\" names another folder.");
    }

    /** The conversation is over: nothing is left to resume. A conversation of before is left alone. */
    void end() {
        if (!ours) {
            return;
        }
        try {
            journal.end();
        } catch (IOException e) {
            say.accept("The finished conversation could not be cleared from " + shop + ": " + Trouble.why(shop, e)
                    + ". The next start offers it once more.");
        }
    }

    /** True when every answer is on disk. */
    boolean kept() {
        return state == State.KEPT;
    }

    /** What to know on leaving when not every answer is on disk, with a space before it; empty when there is nothing. */
    String lost() {
        return switch (state) {
            case NOWHERE, KEPT -> "";
            case WAITING ->
                " The unfinished conversation of before still stands: \"pourwright resume\" goes on with it.";
            case ELSEWHERE -> " The answers were not kept.";
            case TROUBLE -> ours ? " The last answers were not kept." : " The answers were not kept.";
        };
    }

    /** The kit that was remembered. */
    Answers kit() {
        if (shop == null) {
            return Answers.NONE;
        }
        Kit kit = new Kit(shop, knowledge);
        try {
            return kit.remembered();
        } catch (IOException unreadable) {
            say.accept("The kit in " + kit.file() + " cannot be read, so it is asked again." + aside(kit));
            return Answers.NONE;
        }
    }

    private String aside(Kit kit) {
        if (lock == null) {
            return "";
        }
        try {
            return " The file is kept as " + kit.setAside().getFileName() + ".";
        } catch (IOException e) {
            return "";
        }
    }

    /** Remembers the kit; only the console that keeps here does, so that two do not mix theirs. */
    void remember(Answers answers) {
        if (state != State.KEPT && state != State.WAITING) {
            return;
        }
        try {
            new Kit(shop, knowledge).remember(answers);
        } catch (IOException e) {
            say.accept("The kit cannot be remembered in " + shop + ": " + Trouble.why(shop, e)
                    + ". The next plan asks for it again.");
        }
    }

    /** Lets the folder go. */
    @Override
    public void close() {
        if (lock != null) {
            try {
                lock.close();
            } catch (IOException ignored) {
                // The end of the program lets it go.
                return;
            } finally {
                lock = null;
            }
        }
    }
}
