package pourwright.knowledge;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;

/**
 * A list that is read from its file when somebody first looks into it; see {@link Lazily}.
 *
 * @param <V> what it holds
 */
final class LazyList<V> extends AbstractList<V> {
    private final Supplier<List<V>> reading;
    private volatile List<V> read;

    LazyList(Supplier<List<V>> reading) {
        this.reading = reading;
    }

    private List<V> all() {
        List<V> now = read;
        return now == null ? readOnce() : now;
    }

    private synchronized List<V> readOnce() {
        if (read == null) {
            read = reading.get();
        }
        return read;
    }

    @Override
    public V get(int index) {
        return all().get(index);
    }

    @Override
    public int size() {
        return all().size();
    }
}
