package pourwright.cli;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;

/**
 * What becomes of a signal of the system, such as Ctrl-C. The class for it is no documented part of Java, so it is sought
 * by name, and where it is missing the system's own answer stays. The library of the line editor does the same, but sets
 * up logging first, which takes longer than all the rest.
 */
final class SystemSignals {
    private static final String SIGNAL = "sun.misc.Signal";
    private static final String HANDLER = "sun.misc.SignalHandler";

    private SystemSignals() {}

    /**
     * Runs this on a signal.
     *
     * @param name such as {@code INT}
     * @return what was done on it before, or null when it cannot be caught here
     */
    static Object on(String name, Runnable run) {
        try {
            Class<?> type = Class.forName(HANDLER);
            return set(
                    name,
                    Proxy.newProxyInstance(
                            SystemSignals.class.getClassLoader(), new Class<?>[] {type}, (p, m, args) -> {
                                return answer(p, m, args, run);
                            }));
        } catch (ClassNotFoundException e) {
            return null;
        }
    }

    private static Object answer(Object proxy, Method method, Object[] args, Runnable run) {
        return switch (method.getName()) {
            case "equals" -> proxy == args[0];
            case "hashCode" -> System.identityHashCode(proxy);
            case "toString" -> "handler of " + run;
            default -> {
                run.run();
                yield null;
            }
        };
    }

    /** Lets the system answer it; the same result. */
    static Object standard(String name) {
        try {
            return set(name, Class.forName(HANDLER).getField("SIG_DFL").get(null));
        } catch (ReflectiveOperationException e) {
            return null;
        }
    }

    /** Puts back what {@link #on} or {@link #standard} gave; the same result. */
    static Object set(String name, Object handler) {
        if (handler == null) {
            return null;
        }
        try {
            Class<?> type = Class.forName(SIGNAL);
            Object signal = type.getConstructor(String.class).newInstance(name);
            return type.getMethod("handle", type, Class.forName(HANDLER)).invoke(null, signal, handler);
        } catch (InvocationTargetException e) {
            // Not on this system, or Java keeps it for itself.
            return null;
        } catch (ReflectiveOperationException e) {
            return null;
        }
    }
}
