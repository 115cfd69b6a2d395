package mouldwright.workbench.editor;

import java.nio.file.Path;
import java.util.Optional;
import mouldwright.plan.BuildPlan;

/**
 * What the views are to show.
 *
 * @param file  the spec in the editor in front; empty where there is none
 * @param plan  the last plan of the plug at the cursor; empty if none could be made yet
 * @param code  of the plug and of the revision the plan is of, as it is written on drawings; empty without a plan
 * @param state of the plan against the text
 * @param line  of the cursor, from 1
 * @param about key of what the cursor stands in, as drawings know it, such as {@code station.S3}; empty for nothing in particular
 */
public record Shown(Optional<Path> file, Optional<BuildPlan> plan, String code, State state, int line, String about) {

    /** No spec is in front. */
    public static final Shown NOTHING = new Shown(Optional.empty(), Optional.empty(), "", State.CURRENT, 1, "");

    /** How a plan stands to the text. */
    public enum State {
        /** It is of this very text. */ CURRENT,
        /** The text has changed since and is being planned. */ BEHIND,
        /** The text has errors, so that the last good plan stays. */ BROKEN
    }

    /** The station the cursor stands in. */
    public Optional<String> station() {
        return about.startsWith(Places.STATION) ? Optional.of(about.substring(Places.STATION.length())) : Optional.empty();
    }

    /** Whether a view that shows another has to draw anew, the cursor apart. */
    public boolean hasPlanOf(Shown other) {
        return plan.isPresent() == other.plan.isPresent() && (plan.isEmpty() || plan.get() == other.plan.get()) && code.equals(other.code);
    }
}
