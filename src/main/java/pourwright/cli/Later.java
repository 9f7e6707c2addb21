package pourwright.cli;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/** Reads on a thread of its own while the terminal is being opened. */
final class Later {
    private Later() {}

    /** Starts reading. */
    static <T> Future<T> read(Supplier<T> supplier) {
        FutureTask<T> task = new FutureTask<>(supplier::get);
        Thread thread = new Thread(task, "reading");
        thread.setDaemon(true);
        thread.start();
        return task;
    }

    /** What was read, with the fault of the reading thrown as if it had happened here. */
    static <T> T ready(Future<T> reading) {
        try {
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
