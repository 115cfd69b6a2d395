package mouldwright.check;

import static mouldwright.check.CatalogueTest.found;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Each check of finish, release and mould finds its trouble, with figure, limit and place, and nothing in a spec just inside the limit. Limits are common practice unless a test
 *  says otherwise. */
class MouldChecksTest {

    private static final String STOCK = """
            coating Surfacer { density 1.3 kg/l wet 200 um dry 150 um transfer 70 % styrene 30 % }
            coating Lacquer { density 1.0 kg/l wet 100 um dry 30 um transfer 70 % }
            coating ToolingGel { density 1.2 kg/l wet 400 um dry 340 um transfer 95 % styrene 35 % }
            coating Wax { coverage 80 m2/kg }
            coating Film { coverage 12 m2/l }
            schedule Shell using Ortho { coat ToolingGel 2 of ply Csm450 }
            """;

    private static final String RELEASE = "release { 5 coats Wax 1 coats Film }";
    private static final String HALVES = "half Upper pull up half Lower pull down";

    /** The plain cylinder, with what a test adds, parted at its sides and released well. */
    private static String spec(String more) {
        return STOCK + CatalogueTest.cylinder("run out 50 mm trim 10 mm " + more);
    }

    private static String mould(String block) {
        return spec("mould Shell { " + block + " }");
    }

    @Test void aCylinderPartedAtItsSidesHasNoFindings() {
        assertThat(found(mould(HALVES + " " + RELEASE))).isEmpty();
    }

    @Test void aCylinderInOnePieceIsUndercutByHalf() { // half of 2 pi r l = 0.377 m2, closed form
        assertThat(found(mould("one piece pull up " + RELEASE))).singleElement().asString()
                .startsWith("MW701 0.377 m2 of the mould is undercut, worst -90 deg").contains("split the mould there");
    }

    @Test void aFlatEndAlongThePullHasNoDraft() { // half a disc of 200 mm radius and two of them: 0.126 m2 to each half, closed form
        assertThat(found(mould(HALVES + " " + RELEASE).replace("run out", "end forward moulded end aft moulded run out"))).hasSize(2)
                .first().asString().startsWith("MW702 0.126 m2 of half Upper has less draft than 2 deg: the end at A stands along the pull");
    }

    @Test void aWallOfHalfADegreeIsTooSteep() { // 9 mm in over 1000 mm are 0.52 deg, 18 mm are 1.03 deg: closed form
        String tray = STOCK + CatalogueTest.cylinder("").replaceAll("(?s)plug P \\{.*", "") + """
                plug P { units mm half sections run out 50 trim 10 station A at 0 { 200 0 (200 - LEAN) 1000 knuckle 0 1000 } station B at 400 like A
                    mould Shell { draft 1 deg at least one piece pull up RELEASE } }
                """.replace("RELEASE", RELEASE);
        assertThat(found(tray.replace("LEAN", "9"))).singleElement().asString().startsWith("MW702").contains("less draft than 1 deg, least 0.516 deg");
        assertThat(found(tray.replace("LEAN", "18"))).isEmpty();
    }

    @Test void aMouldIsAtLeastTwiceItsPart() { // Practical Action, Fibreglass boat building
        assertThat(found(mould(HALVES + " " + RELEASE).replace("run out", "part Shell run out"))).singleElement().asString().startsWith("MW704 laminate of 2.2");
        assertThat(found(mould(HALVES + " " + RELEASE).replace("run out", "part OnePly run out"))).isEmpty();
    }

    @Test void aFlangeGivesBoltsRoom() {
        assertThat(found(mould(HALVES + " flange 40 mm " + RELEASE))).singleElement().asString().startsWith("MW705 flange of 40 mm, 50 mm at least");
        assertThat(found(mould(HALVES + " flange 50 mm " + RELEASE))).isEmpty();
    }

    @Test void aNewPlugIsWaxedThreeTimesAtLeast() { // K&C Mouldings: 3 to 4; others 5 to 7
        assertThat(found(mould(HALVES + " release { 2 coats Wax 1 coats Film }"))).singleElement().asString().startsWith("MW706 2 coats of wax, 3 at least");
        assertThat(found(mould(HALVES + " release { 3 coats Wax 1 coats Film }"))).isEmpty();
    }

    @Test void aNewPlugIsNeverReleasedByWaxAlone() {
        assertThat(found(mould(HALVES + " release { 5 coats Wax }"))).singleElement().asString().startsWith("MW707 no release film");
        assertThat(found(mould(HALVES + " release { 3 coats Wax 1 coats Film 1 coats Wax }"))).singleElement().asString().startsWith("MW707 Wax over the release film");
    }

    @Test void aMouldStaysOnThePlugForAWeek() {
        assertThat(found(mould(HALVES + " hold 5 d " + RELEASE))).singleElement().asString().startsWith("MW708 released after 5 d, 7 d at least");
        assertThat(found(mould(HALVES + " hold 7 d " + RELEASE))).isEmpty();
    }

    @Test void aCoatOfMoreThan25MilCracks() { // 0.635 mm, as quoted on iboats
        assertThat(found(spec("finish { 1 coats Surfacer }").replace("wet 200 um", "wet 640 um"))).singleElement().asString().startsWith("MW709 a coat of Surfacer is 0.64");
        assertThat(found(spec("finish { 1 coats Surfacer }").replace("wet 200 um", "wet 630 um"))).isEmpty();
    }

    @Test void aGritIsAtMostTwiceAsFineAsTheOneBefore() {
        assertThat(found(spec("finish { 1 coats Surfacer sand 80 180 }"))).singleElement().asString().startsWith("MW710 grit 180 after 80, 160 at most").contains("-> insert grit 120");
        assertThat(found(spec("finish { 1 coats Surfacer sand 80 160 }"))).isEmpty();
    }

    @Test void gritsGetFiner() {
        assertThat(found(spec("finish { 1 coats Surfacer sand 120 80 }"))).singleElement().asString().startsWith("MW710 grit 80 after 120: each grit is finer");
    }

    @Test void aLacquerUnderGelCoatIsAskedAfter() {
        assertThat(found(spec("finish { 2 coats Lacquer } mould Shell { " + HALVES + " " + RELEASE + " }"))).singleElement().asString().startsWith("MW711 Lacquer is the last coat");
        assertThat(found(spec("finish { 2 coats Surfacer } mould Shell { " + HALVES + " " + RELEASE + " }"))).isEmpty();
    }

    @Test void aHalfThatIsMissingLeavesItsFaceOut() {
        assertThat(found(mould("half Upper pull up " + RELEASE))).singleElement().asString().startsWith("MW712 0.377 m2 of the moulded face belongs to no half");
    }

    @Test void twoHalvesMayNotLieOverOneAnother() {
        assertThat(found(mould("half Upper pull up half Top pull up half Lower pull down " + RELEASE))).singleElement().asString().startsWith("MW713 0.377 m2");
    }

    @Test void aHalfWhollyOnTheBareFaceCoversNothing() {
        assertThat(found(mould(HALVES + " " + RELEASE).replace("run out", "bare 0 % to 50 % run out"))).singleElement().asString().startsWith("MW714 half Lower covers nothing that is moulded");
    }

    @Test void anOpenEdgeWithoutTrimLineIsAskedAfter() {
        assertThat(found(mould(HALVES + " " + RELEASE).replace("run out 50 mm trim 10 mm", ""))).singleElement().asString().startsWith("MW715 2513 mm of open edge"); // 2 x 2 pi r
    }

    @Test void aSkinWithoutWaxIsNotSandedBare() {
        assertThat(found(spec("skin OnePly { } finish { sand 80 120 }"))).singleElement().asString().startsWith("MW520 the skin is sanded bare, and Ortho has no wax");
        assertThat(found(spec("skin OnePly { } finish { 1 coats Surfacer sand 80 120 }"))).isEmpty();
    }

    @Test void aWaitPastTheRecoatTimeWantsAbrading() { // 24 h: commonly stated for unwaxed orthophthalic resin
        String waiting = mould(HALVES + " " + RELEASE).replace("resin Ortho {", "resin Ortho { recoat within 24 h").replace("coat ToolingGel 2 of ply Csm450", "ply Csm450 wait HOURS ply Csm450");
        assertThat(found(waiting.replace("HOURS", "36 h"))).singleElement().asString().startsWith("MW610 wait of 36 h in Shell, Ortho takes a ply within 24 h");
        assertThat(found(waiting.replace("HOURS", "24 h"))).isEmpty();
    }

    private static String stiffened(int plies, String more) {
        return mould(HALVES + " " + RELEASE + " stiffener across 40 mm by 30 mm { every 250 mm ply Csm450 " + more + " }").replace("2 of ply Csm450 }", plies + " of ply Csm450 wait 24 h 2 of ply Csm450 }")
                .replace("resin Ortho {", "resin Ortho { hard after 12 h");
    }

    @Test void aStiffenerWaitsForTheResinToGetHard() { // hard after 12 h, as the library states it
        assertThat(found(stiffened(3, "after 10 h"))).singleElement().asString().startsWith("MW620 stiffeners 10 h after the last ply, Ortho is hard after 12 h");
        assertThat(found(stiffened(3, "after 12 h"))).isEmpty();
        assertThat(found(stiffened(3, ""))).isEmpty();
    }

    @Test void fivePliesLieUnderAStiffener() { // Practical Boat Owner, May 2018
        assertThat(found(stiffened(2, ""))).singleElement().asString().startsWith("MW621 stiffeners on 4 plies, 5 at least");
        assertThat(found(stiffened(3, ""))).isEmpty();
    }

    @Test void lessFreshAirThanTheWorstSessionAsksForIsToldOf() {
        assertThat(found(mould(HALVES + " " + RELEASE).replace("run out", "air { supply 50 m3/h } run out"))).singleElement().asString()
                .startsWith("MW820 the worst session asks for").contains("the shop has 50 m3/h");
        assertThat(found(mould(HALVES + " " + RELEASE).replace("run out", "air { supply 500000 m3/h } run out"))).isEmpty();
    }

    /** Fourteen days on the plug after a day or two of work: done in the third week of March. */
    private static String from(String start, String wanted) {
        return mould(HALVES + " " + RELEASE).replace("run out", start + " " + wanted + " run out");
    }

    @Test void aProgrammeThatEndsTooLateIsToldOf() {
        assertThat(found(from("start 2027-03-01", "ready by 2027-03-10"))).singleElement().asString().startsWith("MW821 all is done and cured on 2027-03-").contains("d after 2027-03-10");
        assertThat(found(from("start 2027-03-01", "ready by 2027-04-30"))).isEmpty();
    }

    @Test void aDayToBeReadyByNeedsADayToStartOn() {
        assertThat(found(from("", "ready by 2027-04-30"))).singleElement().asString().startsWith("MW821 ready by 2027-04-30, and no first day");
    }

    @Test void aProgrammeThatEndsTooSoonIsToldOf() {
        assertThat(found(from("start 2027-03-01", "ready after 2027-04-30"))).singleElement().asString().startsWith("MW822").contains("d before 2027-04-30");
        assertThat(found(from("start 2027-03-01", "ready after 2027-03-02"))).isEmpty();
    }
}
