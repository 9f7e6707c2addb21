package pourwright.knowledge;

import java.util.AbstractMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/**
 * A map that is read from its file when somebody first looks into it. Only for files whose seal fits: what they hold was
 * checked by the build, so reading them later cannot bring a fault to light.
 *
 * @param <V> what it holds, by name
 */
final class Lazily<V> extends AbstractMap<String, V> {
    private final Supplier<Map<String, V>> reading;
    private volatile Map<String, V> read;

    Lazily(Supplier<Map<String, V>> reading) {
        this.reading = reading;
    }

    private Map<String, V> all() {
        Map<String, V> now = read;
        return now == null ? readOnce() : now;
    }

    private synchronized Map<String, V> readOnce() {
        if (read == null) {
            read = reading.get();
        }
        return read;
    }

    @Override
    public V get(Object key) {
        return all().get(key);
    }

    @Override
    public boolean containsKey(Object key) {
        return all().containsKey(key);
    }

    @Override
    public Set<Entry<String, V>> entrySet() {
        return all().entrySet();
    }

    @Override
    public int size() {
        return all().size();
    }
}
