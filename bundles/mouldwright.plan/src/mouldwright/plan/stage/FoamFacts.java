package mouldwright.plan.stage;

import mouldwright.plan.spec.FillDefaults;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Given;

/** What a foam states, or its defaults. */
final class FoamFacts {

    private FoamFacts() { }

    static Given lift(Foam foam) {
        return foam.lift().orElseGet(FillDefaults::lift);
    }

    static Given pot(Foam foam) {
        return foam.pot().orElseGet(FillDefaults::foamPot);
    }

    static Given cream(Foam foam) {
        return foam.cream().orElseGet(FillDefaults::creamTime);
    }

    static Given firm(Foam foam) {
        return foam.firm().orElseGet(FillDefaults::firm);
    }

    static Given rise(Foam foam) {
        return foam.rise().orElseGet(FillDefaults::riseTime);
    }

    static Given carve(Foam foam) {
        return foam.carve().orElseGet(FillDefaults::carveAfter);
    }

    static Given expansion(Foam foam) {
        return foam.expansion().orElseGet(FillDefaults::expansion);
    }

    static Foam.Ratio ratio(Foam foam) {
        return foam.ratio().orElseGet(FillDefaults::ratio);
    }

    /** Whether the liquid's density is known, so that its volume follows from its mass. */
    static boolean liquidKnown(Foam foam) {
        return foam.partA().isPresent() && foam.partB().isPresent();
    }
}
