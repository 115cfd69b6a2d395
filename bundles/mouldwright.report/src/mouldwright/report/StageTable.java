package mouldwright.report;

import mouldwright.units.Display;

/** What stands under the figures of one stage in every paper of an estimate. A new one is one class and one line in {@link EstimatePaper}. */
interface StageTable {

    /** The stage it belongs to. */
    String stage();

    /** Adds it; adds nothing where the estimate has nothing for it. */
    void print(Estimate estimate, Display display, Section out);
}
