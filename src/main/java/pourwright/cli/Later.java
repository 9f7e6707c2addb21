package pourwright.cli;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/** Reads on a thread of its own while the terminal is being opened or the person reads. */
final class Later {
    private static final long AFTER_THE_QUESTION_MS = 30;

    private Later() {}

    /** Starts reading. */
    static <T> Future<T> read(Supplier<T> supplier) {
        FutureTask<T> task = new FutureTask<>(supplier::get);
        Thread thread = new Thread(task, "reading");
        thread.setDaemon(true);
        thread.start();
        return task;
    }

    /** The same a moment later, while the person reads the first question; at once when somebody needs it before. */
    static <T> Future<T> readSoon(Supplier<T> supplier) {
        FutureTask<T> task = new FutureTask<>(supplier::get);
        Thread thread = new Thread(
                () -> {
                    try {
                        task.get(AFTER_THE_QUESTION_MS, TimeUnit.MILLISECONDS);
                    } catch (TimeoutException | ExecutionException e) {
                        task.run();
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                },
                "reading soon");
        thread.setDaemon(true);
        thread.start();
        return task;
    }

    /** What was read, with the fault of the reading thrown as if it had happened here. */
    static <T> T ready(Future<T> reading) {
        try {
            if (reading instanceof FutureTask<T> task) {
                // Runs it here when nobody has begun, and does nothing when somebody has.
                task.run();
            }
            return reading.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
