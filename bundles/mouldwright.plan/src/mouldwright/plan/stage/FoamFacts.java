package mouldwright.plan.stage;

import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Given;

/** What a foam states, or its defaults. */
final class FoamFacts {

    private FoamFacts() { }

    static Given lift(Foam foam) {
        return foam.lift().orElseGet(Defaults::lift);
    }

    static Given pot(Foam foam) {
        return foam.pot().orElseGet(Defaults::foamPot);
    }

    static Given cream(Foam foam) {
        return foam.cream().orElseGet(Defaults::creamTime);
    }

    static Given firm(Foam foam) {
        return foam.firm().orElseGet(Defaults::firm);
    }

    static Given rise(Foam foam) {
        return foam.rise().orElseGet(Defaults::riseTime);
    }

    static Given carve(Foam foam) {
        return foam.carve().orElseGet(Defaults::carveAfter);
    }

    static Given expansion(Foam foam) {
        return foam.expansion().orElseGet(Defaults::expansion);
    }

    static Foam.Ratio ratio(Foam foam) {
        return foam.ratio().orElseGet(Defaults::ratio);
    }

    /** Whether the liquid's density is known, so that its volume follows from its mass. */
    static boolean liquidKnown(Foam foam) {
        return foam.partA().isPresent() && foam.partB().isPresent();
    }
}
