package pourwright.cli;

import java.io.Console;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.impl.PosixSysTerminal;
import org.jline.terminal.impl.jni.JniTerminalProvider;
import org.jline.terminal.spi.Pty;
import org.jline.terminal.spi.SystemStream;
import org.jline.terminal.spi.TerminalProvider;
import org.jline.utils.OSUtils;
import pourwright.console.Capabilities;

/**
 * The terminal the program was started at. The library's usual way asks two other programs about it, which takes longer
 * than all the rest; its native part answers the same at once, and the usual way remains for where that part will not load.
 */
final class Terminals {
    private Terminals() {}

    /** Loaded on first use, once; none where the native part of the library will not load. */
    private static final class Native {
        static final Optional<JniTerminalProvider> PROVIDER = load();

        private static Optional<JniTerminalProvider> load() {
            if (OSUtils.IS_WINDOWS) {
                return Optional.empty();
            }
            try {
                return Optional.of(new Provider());
            } catch (RuntimeException | LinkageError e) {
                // Not there for this system, or no room to unpack it: the usual way will do.
                return Optional.empty();
            }
        }
    }

    /** The library's own, with signals caught our way. */
    private static final class Provider extends JniTerminalProvider {
        @Override
        public Object registerSignal(String name, Runnable handler) {
            return SystemSignals.on(name, handler);
        }

        @Override
        public Object registerDefaultSignal(String name) {
            return SystemSignals.standard(name);
        }

        @Override
        public void unregisterSignal(String name, Object before) {
            SystemSignals.set(name, before);
        }
    }

    /** Whether both ends are a terminal. */
    static boolean atBothEnds() {
        return Native.PROVIDER
                .map(p -> p.isSystemStream(SystemStream.Input) && p.isSystemStream(SystemStream.Output))
                .orElseGet(Terminals::isConsole);
    }

    /** From JDK 22 on a console exists even without a terminal; it must be asked. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean isConsole() {
        Object console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }

    /**
     * Opens it. What was typed before stays to be read.
     *
     * @param type what the environment calls this kind of terminal
     * @throws IOException when it cannot be opened after all
     */
    static Terminal open(String type) throws IOException {
        if (Native.PROVIDER.isEmpty()) {
            return TerminalBuilder.builder()
                    .system(true)
                    .dumb(false)
                    .graphemeCluster(false)
                    .encoding(StandardCharsets.UTF_8)
                    .build();
        }
        JniTerminalProvider provider = Native.PROVIDER.get();
        return new Opened(provider, type, provider.current(SystemStream.Output));
    }

    /** The library's terminal, with what it can do taken from the tables where they name it. */
    private static final class Opened extends PosixSysTerminal {
        Opened(TerminalProvider provider, String type, Pty pty) throws IOException {
            super(
                    provider,
                    "Pourwright",
                    type,
                    pty,
                    StandardCharsets.UTF_8,
                    StandardCharsets.UTF_8,
                    StandardCharsets.UTF_8,
                    true,
                    Terminal.SignalHandler.SIG_DFL);
        }

        @Override
        protected void parseInfoCmp() {
            if (!Capabilities.known(type, bools, ints, strings)) {
                super.parseInfoCmp();
            }
        }
    }
}
