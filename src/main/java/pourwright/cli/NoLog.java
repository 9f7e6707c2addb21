package pourwright.cli;

import java.util.ResourceBundle;

/**
 * What libraries note down for their makers goes nowhere: nothing of it is for the person, and the platform's own logging
 * takes 15 ms to set up before the first question.
 */
public final class NoLog extends System.LoggerFinder implements System.Logger {
    /** Called by the platform, which finds it by its name in {@code META-INF/services}. */
    public NoLog() {}

    @Override
    public System.Logger getLogger(String name, Module module) {
        return this;
    }

    @Override
    public String getName() {
        return "none";
    }

    @Override
    public boolean isLoggable(Level level) {
        return false;
    }

    @Override
    public void log(Level level, ResourceBundle bundle, String message, Throwable thrown) {}

    @Override
    public void log(Level level, ResourceBundle bundle, String format, Object... parameters) {}
}
