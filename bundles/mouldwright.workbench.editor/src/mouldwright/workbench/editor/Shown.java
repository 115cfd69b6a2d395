package mouldwright.workbench.editor;

import java.nio.file.Path;
import java.util.Optional;
import mouldwright.plan.BuildPlan;

/**
 * What the views are to show.
 *
 * @param file  the spec in the editor in front
 * @param plan  the last plan of the plug at the cursor; empty if none could be made yet
 * @param stale whether the text has changed since, so that the plan is to be shown greyed
 * @param line  of the cursor, from 1
 */
public record Shown(Path file, Optional<BuildPlan> plan, boolean stale, int line) { }
