package mouldwright.check;

import mouldwright.plan.BuildPlan;

/** One check: when it applies, what it measures, what it says, what mends it. */
public interface Check {

    /** Looks at a plan.
     *  @param plan  the plan, complete or not: a stage that is not in it has no measures
     *  @param out   takes what is found */
    void examine(BuildPlan plan, Findings out);
}
