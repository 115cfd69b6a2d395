package mouldwright.services;

import org.apache.log4j.Level;
import org.apache.log4j.Logger;
import org.apache.log4j.varia.NullAppender;

/** Keeps the libraries' log off the terminal: what concerns the user is a finding, what does not is nobody's. */
final class QuietLog {

    private QuietLog() { }

    /** Has to be called before any class that logs is loaded; looks for no configuration on the class path. */
    static void install() {
        System.setProperty("log4j.defaultInitOverride", "true");
        Logger root = Logger.getRootLogger();
        root.removeAllAppenders();
        root.addAppender(new NullAppender());
        root.setLevel(Level.OFF);
    }
}
