package mouldwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.inject.Injector;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import mouldwright.language.PlugStandaloneSetup;
import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.Issue;
import org.junit.jupiter.api.Test;

/** Each check finds its trouble in a spec that has it, with figure, limit and place, and nothing in one that has not. Limits are common practice unless a
 *  test says otherwise. */
class CatalogueTest {

    private static final Injector INJECTOR = setUp();

    private static final String STOCK = """
            foam Pour36 {
                expansion 32
                density 36 kg/m3
                ratio 100 to 100 by volume
                parts 1.12 kg/l and 1.22 kg/l
                cream 36 s
                firm 30 min
                lift 200 mm at most
                pot 1 kg at most
                temperature 18 degC to 27 degC
            }
            hardener Mekp { density 1.16 kg/l }
            resin Ortho {
                density 1.13 kg/l
                catalyst Mekp 1 % to 2.5 %
                gel {
                    15 degC 1 % 55 min
                    15 degC 2 % 30 min
                    25 degC 1 % 24 min
                    25 degC 2 % 12 min
                }
            }
            mat Csm450 { areal 450 g/m2 glass 28.6 % roll 1.25 m by 50 m }
            sheet Ply12 { size 1220 mm by 2440 mm thickness 12 mm density 695 kg/m3 }
            schedule OnePly using Ortho { ply Csm450 }
            schedule NoPly using Ortho { }
            mat Csm600 { areal 600 g/m2 glass 28.6 % }
            mat Csm150 { areal 150 g/m2 glass 28.6 % }
            coating Gel { density 1.2 kg/l wet 400 um dry 340 um }
            """;

    private static Injector setUp() {
        org.apache.log4j.Logger.getRootLogger().setLevel(org.apache.log4j.Level.OFF);
        return new PlugStandaloneSetup().createInjectorAndDoEMFRegistration();
    }

    /** A plain cylinder of radius 200 mm and 600 mm length on three plates, with what a test adds. */
    static String cylinder(String more) {
        return STOCK + """
                plug P {
                    half sections
                    station A at 0 superellipse 200 by 400 exponent 2
                    station B at 300 like A
                    station C at 600 like A
                    %s
                }
                """.formatted(more);
    }

    /** Three sections round the x axis whose radii are given, on a pitch of 300 mm. */
    private static String round(int first, int middle, int last, String more) {
        return STOCK + """
                plug P {
                    half sections
                    station A at 0 superellipse %1$d by %2$d exponent 2 above -%1$d
                    station B at 300 superellipse %3$d by %4$d exponent 2 above -%3$d
                    station C at 600 superellipse %5$d by %6$d exponent 2 above -%5$d
                    %7$s
                }
                """.formatted(first, 2 * first, middle, 2 * middle, last, 2 * last, more);
    }

    static List<String> found(String text) {
        XtextResource resource = (XtextResource) INJECTOR.getInstance(XtextResourceSet.class).createResource(URI.createFileURI("/nowhere/tried.plug"));
        try {
            resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), Map.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return resource.getResourceServiceProvider().getResourceValidator().validate(resource, CheckMode.ALL, CancelIndicator.NullImpl).stream()
                .map(CatalogueTest::words).toList();
    }

    private static String words(Issue issue) {
        String fix = issue.getData() == null || issue.getData().length == 0 ? "" : " -> " + issue.getData()[0];
        return issue.getCode() + " " + issue.getMessage() + fix;
    }

    @Test void aCylinderThatIsFilledCarvedAndSkinnedHasNoFindings() {
        assertThat(found(cylinder("""
                frame { sheet Ply12 measured 12 }
                fill Pour36 solid { }
                carve { }
                skin OnePly { }
                """))).isEmpty();
    }

    @Test void stationsOutOfOrderAreToldAtTheSecondOfThem() {
        assertThat(found("plug P { half sections station A at 300 superellipse 200 by 400 station B at 0 like A }"))
                .singleElement().asString().startsWith("MW103 B:").contains("sort the stations");
    }

    @Test void oneStationIsNoBody() {
        assertThat(found("plug P { half sections station A at 0 superellipse 200 by 400 }"))
                .singleElement().asString().startsWith("MW103 two stations at least shape a body");
    }

    @Test void anOutlineThatCrossesItselfIsNoSection() {
        assertThat(found("plug P { half sections station A at 0 { 0 0 100 0 knuckle 50 100 knuckle 120 60 knuckle 0 20 } station B at 400 like A }"))
                .singleElement().asString().startsWith("MW101 A:").contains("cross");
    }

    @Test void linesThatDoNotMatchAreToldWithTheStation() {
        assertThat(found("""
                plug P {
                    half sections
                    station A at 0 { 0 0 100 0 knuckle 100 50 knuckle 0 50 }
                    station B at 400 { 0 0 100 0 knuckle 0 50 }
                }
                """)).singleElement().asString().startsWith("MW103");
    }

    @Test void aPlateThatTheBuildUpEatsUpVanishes() {
        assertThat(found(STOCK + """
                plug P {
                    half sections
                    station A at 0 superellipse 200 by 400
                    station B at 300 superellipse 0.9 by 1.8 above 199
                    frame { sheet Ply12 measured 12 }
                    skin OnePly { }
                }
                """)).anySatisfy(finding -> assertThat(finding).startsWith("MW201 B:").contains("unplated"));
    }

    @Test void aPocketThatOpensOnASolidBayIsToldWithItsVolume() { // closed form: a disc of 140 mm radius, 12 mm thick: 0.739 l
        assertThat(found(cylinder("frame { sheet Ply12 measured 12 rim 60 } fill Pour36 shell 90 { bay A to B solid }"))).filteredOn(finding -> finding.startsWith("MW315"))
                .hasSize(2).allSatisfy(finding -> assertThat(finding).contains("bay A to B, poured solid", "739 ml", "blank the pocket off"));
    }

    @Test void aPlateBesideASolidBayHasNoPocketUnlessARimIsStated() {
        assertThat(found(cylinder("frame { sheet Ply12 measured 12 } fill Pour36 shell 90 { bay A to B solid }"))).noneMatch(finding -> finding.startsWith("MW315"));
        assertThat(found(cylinder("frame { sheet Ply12 measured 12 rim 60 } fill Pour36 shell 90 { }"))).noneMatch(finding -> finding.startsWith("MW315"));
    }

    @Test void aBevelOver45DegreesIsToldWithItsAngle() {
        assertThat(found(round(100, 250, 600, "frame { sheet Ply12 measured 12 edges bevelled }")))
                .anySatisfy(finding -> assertThat(finding).startsWith("MW210 bevel of").contains("at C", "45 deg at most"));
    }

    @Test void aGapOfMoreThanFourMillimetresAsksForBevelledEdges() {
        // a cone of 1 in 2: the gap is T sin(26.57 deg) = 5.37 mm for 12 mm plywood (closed form)
        assertThat(found(round(100, 250, 400, "frame { sheet Ply12 measured 12 }"))).anySatisfy(finding -> assertThat(finding)
                .startsWith("MW211 gap of 5.3").contains("at the square edge of B", "4 mm at most", "edges bevelled"));
        assertThat(found(round(100, 250, 400, "frame { sheet Ply12 measured 12 edges bevelled }"))).noneMatch(finding -> finding.startsWith("MW211"));
    }

    @Test void foamPouredTooColdIsTold() {
        assertThat(found(cylinder("shop 12 degC fill Pour36 solid { }")))
                .singleElement().asString().startsWith("MW306 shop at 12 degC, Pour36 asks for 18 degC at least");
    }

    @Test void expansionAndDensityMustMakeTheLiquidItsComponentsMake() {
        // 25 x 36 = 900 kg/m3 against 1170 of the components, 23 % apart
        assertThat(found(cylinder("fill Pour36 solid { }").replace("expansion 32", "expansion 25")))
                .singleElement().asString().startsWith("MW305 Pour36:").contains("10 % apart at most");
    }

    @Test void overfillMustCoverTheCrownAndFiveMillimetres() {
        assertThat(found(cylinder("fill Pour36 solid { overfill 4 }")))
                .hasSize(2).allSatisfy(finding -> assertThat(finding).startsWith("MW308 overfill of 4 mm").contains("-> state `overfill` of 5 mm"));
    }

    @Test void aDeepPourOfAFoamWithoutStatedLiftIsTold() {
        assertThat(found(cylinder("fill Pour36 solid { }").replace("lift 200 mm at most", "")))
                .singleElement().asString().startsWith("MW309 Pour36 states no lift");
    }

    @Test void crownOverTheLimitAsksForAStationWhereItIsHighest() {
        // a barrel: 200, 230, 200 over 600 mm is a bulge of radius 1515 mm; between stations 300 apart the sagitta is 7.4 mm
        assertThat(found(round(200, 230, 200, "carve { crown 2 at most }")))
                .hasSize(2).first().asString().startsWith("MW412 crown of 7.").contains("between A and B, 2 mm at most", "-> insert ");
        assertThat(found(round(200, 230, 200, "carve { crown 10 at most }"))).isEmpty();
    }

    @Test void aHollowIsLeftHighByTheBoard() {
        assertThat(found(round(230, 200, 230, "carve { crown 2 at most }"))).first().asString().startsWith("MW412 hollow of 7.");
    }

    @Test void aBoardMustReachOverTwoPlates() {
        assertThat(found(cylinder("carve { board 350 }"))).hasSize(2).first().asString().startsWith("MW431 bay A to B is 300 mm long, the board 350 mm");
        assertThat(found(cylinder("carve { board 400 }"))).isEmpty();
    }

    /** A cylinder that is carved, with a survey of it; the filler takes 6 mm a layer. */
    private static String surveyed(String readings) {
        return STOCK + """
                filler Stopper { layer 6 mm at most total 12 mm at most }
                plug P {
                    half sections
                    station A at 0 superellipse 200 by 400 exponent 2
                    station B at 300 like A
                    station C at 600 like A
                    frame { sheet Ply12 measured 12 tolerance 1.5 }
                    fill Pour36 solid { }
                    carve { filler Stopper }
                }
                survey P on 2027-03-09 { %s }
                """.formatted(readings);
    }

    @Test void aBroadShallowBayIsPackedFromInside() { // common practice: opening over 3 x depth
        String flat = STOCK + """
                plug P {
                    half sections
                    station A at 0 { 0 0 300 0 knuckle 300 DEEP knuckle 0 DEEP }
                    station B at 400 like A
                    fill Pour36 solid { overfill 5 }
                }
                """;
        assertThat(found(flat.replace("DEEP", "100"))).singleElement().asString().startsWith("MW310 bay A to B opens 400 mm wide and is 110 mm deep").contains("shell");
        assertThat(found(flat.replace("DEEP", "130"))).isEmpty();
    }

    @Test void aShellUnderFiftyMillimetresDoesNotFill() { // a supplier's notes: cavities of 50 to 300 mm
        assertThat(found(cylinder("fill Pour36 shell 30 { }"))).hasSize(2).allSatisfy(finding -> assertThat(finding).startsWith("MW311").contains("45 mm wide, 50 mm at least"));
        assertThat(found(cylinder("fill Pour36 shell 35 { }"))).isEmpty();
    }

    @Test void aThickBlockIsHotLongAfterItIsFirm() { // 200 mm cool in 2.3 h (slab, 5e-7 m2/s), firm after half an hour
        String tall = cylinder("fill Pour36 solid { }").replace("200 by 400", "200 by 570");
        assertThat(found(tall)).hasSize(2).first().asString().startsWith("MW312 a lift of bay A to B is firm after 30 min and cool after 2.");
        assertThat(found(tall.replace("lift 200 mm", "lift 150 mm"))).isEmpty();
    }

    @Test void aPourWithoutATrialCupIsTold() { // start small until the cure is known: common practice
        assertThat(found(surveyed("poured A to B 1 kg rise 200"))).singleElement().asString().startsWith("MW313 foam was poured and no trial cup is on record");
        assertThat(found(surveyed("trial cream 36 s rise 150 s poured A to B 1 kg rise 200"))).isEmpty();
    }

    @Test void aCupThatCreamsSoonerThanItsSheetSaysMakesPotsTooLarge() { // the sheet: 36 s
        assertThat(found(surveyed("trial cream 28 s"))).singleElement().asString().startsWith("MW314 the trial cup creamed after 28 s, Pour36 states 36 s at least");
        assertThat(found(surveyed("trial cream 40 s"))).isEmpty();
    }

    @Test void aGougeIsMendedByItsDepth() {
        assertThat(found(surveyed("gouge A to B at 150 port girth 300 depth 7 over 90 by 40"))).singleElement().asString()
                .startsWith("MW441 gouge of 7 mm in bay A to B, below the edges of its plates").endsWith("fill it with Stopper in 2 layers, each left to harden");
        assertThat(found(surveyed("gouge A to B at 150 port girth 300 depth 14 over 90 by 40"))).singleElement().asString().contains("bond in new foam");
        assertThat(found(surveyed("gouge A to B at 150 port girth 300 depth 7 over 90 by 40 mended on 2027-03-10 now 0.2"))).isEmpty();
    }

    @Test void aGougeAcrossAPlateIsCheckedAgainstThePlate() {
        assertThat(found(surveyed("gouge A to B at 280 port girth 300 depth 7 over 90 by 40"))).singleElement().asString()
                .startsWith("MW441 gouge of 7 mm in bay A to B, and across plate B").contains("template first");
    }

    @Test void aPlateOutOfToleranceIsToldWithWhatItDoesToTheSurface() { // e = d . n; 1.5 mm as a straightedge reaches, common practice
        assertThat(found(surveyed("station B low 2"))).singleElement().asString()
                .startsWith("MW442 plate B stands 2 mm low, 1.5 mm at most: carved to it the surface is up to 2 mm");
        assertThat(found(surveyed("station B low 1.4"))).isEmpty();
    }

    @Test void aDeepVoidIsFilledInLayers() {
        assertThat(found(surveyed("void A to B at 150 port girth 300 depth 8 over 30 by 30"))).singleElement().asString()
                .startsWith("MW443 void in bay A to B is 8 mm deep, a layer of Stopper 6 mm at most").contains("2 layers");
        assertThat(found(surveyed("void A to B at 150 port girth 300 depth 5 over 30 by 30"))).isEmpty();
    }

    @Test void whatWasMendedIsMeasuredAgain() {
        assertThat(found(surveyed("void A to B at 150 port girth 300 depth 5 over 30 by 30 mended on 2027-03-10"))).singleElement().asString()
                .startsWith("MW444 void in bay A to B was mended on 2027-03-10");
        assertThat(found(surveyed("void A to B at 150 port girth 300 depth 5 over 30 by 30 mended on 2027-03-10 now 0.2"))).isEmpty();
    }

    @Test void aPlaceOutsideThePlugIsTold() {
        assertThat(found(surveyed("gouge A to B at 350 port girth 300 depth 7 over 90 by 40"))).singleElement().asString().startsWith("MW440");
        assertThat(found(surveyed("gouge A to B at 150 port girth 700 depth 7 over 90 by 40"))).singleElement().asString().startsWith("MW440").contains("past the girth");
        assertThat(found(surveyed("trial cream 36 s poured A to C 3 kg rise 200"))).singleElement().asString().startsWith("MW440 A-C is no bay");
    }

    @Test void anAcceptedFindingIsNotTold() {
        assertThat(found(cylinder("carve { board 350 } accept MW431 \"two boards are joined\""))).isEmpty();
    }

    @Test void anAcceptanceWhoseDayHasPassedNoLongerHolds() {
        assertThat(found(cylinder("carve { board 350 } accept MW431 \"two boards are joined\" until 2001-01-01"))).hasSize(3).last().asString()
                .startsWith("MW935 `MW431` was accepted until 2001-01-01");
    }

    @Test void aFaceWithoutAnyPlyIsToldWithItsArea() {
        assertThat(found(cylinder("skin NoPly { bay A to B add ply Csm450 }"))).anySatisfy(finding -> assertThat(finding)
                .startsWith("MW501").contains("m2 of the moulded face has no ply"));
    }

    @Test void fewerPliesThanRequiredAreToldWithTheirArea() {
        assertThat(found(cylinder("skin OnePly { bay A to B require 2 }"))).singleElement().asString().startsWith("MW502").contains("fewer plies than required");
        assertThat(found(cylinder("skin OnePly { bay A to B add ply Csm450 bay A to B require 2 }"))).noneMatch(finding -> finding.startsWith("MW502"));
    }

    @Test void aGelTimeThatTheTableEndsBeforeIsLateAndAsksForMoreTable() {
        // the table ends at 2 %, the resin's limit is 2.5 %: at 15 degC 2 % gels in 30 min, later than the 25 min wanted
        assertThat(found(cylinder("shop 15 degC skin OnePly { gel for 25 min }"))).singleElement().asString()
                .startsWith("MW602 the gel table ends at 2 % of catalyst, within the resin's limits; that much gels later than wanted")
                .contains("-> extend the table from the supplier's sheet, or warm the shop");
    }

    @Test void aGelTimeTheMostCatalystCannotReachAsksForAWarmerShop() {
        assertThat(found(cylinder("shop 15 degC skin OnePly { gel for 25 min }").replace("1 % to 2.5 %", "1 % to 2 %"))).singleElement().asString()
                .startsWith("MW602 even the most catalyst, 2 %, gels later than wanted").contains("-> warm the shop");
    }

    @Test void aGelTimeTheLeastCatalystComesTooSoonForAsksForSmallerPots() {
        assertThat(found(cylinder("shop 25 degC skin OnePly { gel for 40 min }"))).singleElement().asString()
                .startsWith("MW602 even the least catalyst, 1 %, gels sooner than wanted").contains("-> mix smaller pots");
    }

    @Test void aLapUnderFiftyMillimetresIsToldWithItsWidth() { // laps of 50 mm are common on a plug
        assertThat(found(cylinder("skin OnePly { lap 30 }"))).singleElement().asString().startsWith("MW505 lap of 30 mm, 50 mm at least");
        assertThat(found(cylinder("skin OnePly { lap 2 in }"))).isEmpty();
    }

    @Test void aPlyOverABareFaceIsToldWithItsArea() {
        // closed form: the band of 0 to 30 % lies over 20 % of a girth of 1.257 m that is bare, 300 mm long
        assertThat(found(cylinder("bare 0 % to 20 % skin OnePly { bay A to B girth 0 % to 30 % add ply Csm150 }")))
                .singleElement().asString().startsWith("MW506 ply of Csm150 asked for over 0.075").contains("that is bare");
        assertThat(found(cylinder("bare 0 % to 20 % skin OnePly { bay A to B girth 20 % to 30 % add ply Csm150 }"))).isEmpty();
    }

    @Test void aLocalPlyOfTheWholeGirthMeansTheMouldedFace() {
        assertThat(found(cylinder("bare 0 % to 20 % skin OnePly { bay A to B add ply Csm150 }"))).noneMatch(finding -> finding.startsWith("MW506"));
    }

    @Test void pliesThatEndInOneLineAreToldWithTheLine() {
        assertThat(found(cylinder("skin OnePly { bay A to B girth 0 % to 30 % add ply Csm150 bay A to C girth 10 % to 30 % add ply Csm150 }")))
                .singleElement().asString().startsWith("MW507 2 plies end in one line at 30 % of the girth, 1 at most");
        assertThat(found(cylinder("skin OnePly { bay A to B girth 0 % to 30 % add ply Csm150 bay A to C girth 0 % to 40 % add ply Csm150 }"))).isEmpty();
    }

    @Test void pliesThatEndAtOneStationStackOnlyWhereTheirBandsMeet() {
        assertThat(found(cylinder("skin OnePly { bay A to B girth 0 % to 30 % add ply Csm150 bay A to B girth 20 % to 40 % add ply Csm150 }")))
                .singleElement().asString().startsWith("MW507 2 plies end in one line at B");
        assertThat(found(cylinder("skin OnePly { bay A to B girth 0 % to 30 % add ply Csm150 bay A to B girth 60 % to 80 % add ply Csm150 }"))).isEmpty();
    }

    @Test void theEdgesOfTheBodyAreNoStackedEdges() {
        assertThat(found(cylinder("skin OnePly { bay A to C add 2 of ply Csm150 }"))).isEmpty();
        assertThat(found(cylinder("skin OnePly { bay A to B add 2 of ply Csm150 }"))).anyMatch(finding -> finding.startsWith("MW507 2 plies end in one line at B"));
    }

    @Test void aHeavyMatFirstAgainstAGelCoatIsTold() { // 450 g/m2 at most next to gel coat: class rule text on production procedures
        assertThat(found("schedule Part using Ortho { coat Gel ply Csm600 }\n" + cylinder("part Part skin OnePly { }")))
                .singleElement().asString().startsWith("MW508 Part: Csm600 of 600 g/m2 lies first against a gel coat, 450 g/m2 at most");
        assertThat(found("schedule Part using Ortho { coat Gel ply Csm450 ply Csm600 }\n" + cylinder("part Part skin OnePly { }"))).isEmpty();
    }

    @Test void tooManyPliesAtOnceRunHot() { // 4 x 450 g at 2.5 : 1 cure to 4.45 mm (ISO 12215-5); three to 3.34 mm
        assertThat(found("schedule Thick using Ortho { 4 of ply Csm450 }\n" + cylinder("skin Thick { }")))
                .singleElement().asString().startsWith("MW509 Thick: 4 plies laid at once cure to 4.45 mm, 4 mm at most").contains("wait 12 h");
        assertThat(found("schedule Thick using Ortho { 3 of ply Csm450 wait 12 h ply Csm450 }\n" + cylinder("skin Thick { }"))).isEmpty();
    }

    @Test void localPliesRunHotWithTheSkinTheyLieOn() {
        assertThat(found(cylinder("skin OnePly { bay A to C add 3 of ply Csm450 }"))).singleElement().asString().startsWith("MW509 3 plies of Csm450 added to the skin cure with it to 4.45 mm");
        assertThat(found(cylinder("skin OnePly { bay A to C add 2 of ply Csm450 }"))).isEmpty();
    }

    @Test void glassOutsideWhatAnyKindHoldsIsTold() { // 25 to 35 % for mat, published guides and a class test laminate
        assertThat(found(cylinder("skin OnePly { }").replaceFirst("areal 450 g/m2 glass 28.6 %", "areal 450 g/m2 glass 20 %")))
                .singleElement().asString().startsWith("MW510 glass of 20 % in Csm450, chopped strand mat holds 25 % to 35 %");
        assertThat(found(cylinder("skin OnePly { }").replaceFirst("areal 450 g/m2 glass 28.6 %", "areal 450 g/m2 glass 25 %"))).isEmpty();
    }

    @Test void aLocalPlyOfNothingButGlassIsAnErrorAndNoCrash() { // a share of glass is above 0 and under 100 %
        assertThat(found(cylinder("skin OnePly { bay A to B add ply Csm450 }").replaceFirst("areal 450 g/m2 glass 28.6 %", "areal 450 g/m2 glass 100 %")))
                .anyMatch(finding -> finding.startsWith("MW906")).noneMatch(finding -> finding.startsWith("MW205"));
    }

    @Test void aRollOnWhichNothingIsGainedGivesTooManyPieces() {
        assertThat(found(cylinder("skin OnePly { lap 50 }").replace("roll 1.25 m by 50 m", "roll 50.1 mm by 50 m")))
                .singleElement().asString().startsWith("MW511 Csm450 would be cut in more pieces than anybody lays");
    }

    @Test void aPieceLongerThanItsRollIsTold() {
        assertThat(found(cylinder("skin OnePly { }").replace("roll 1.25 m by 50 m", "roll 1.25 m by 300 mm")))
                .singleElement().asString().startsWith("MW512 a piece of Csm450 is longer than its roll (350 mm against 300 mm)");
    }

    @Test void aPointTypedWrongStandsOffTheCurveOfItsNeighbours() {
        // a half circle of radius 200 mm every 15 degrees; the sixth height is typed 20 mm too high
        String circle = """
                plug P {
                    half sections
                    station A at 0 {
                        0 0
                        51.8 6.8
                        100 26.8
                        141.4 58.6
                        173.2 100
                        193.2 %s
                        200 200
                        193.2 251.8
                        173.2 300
                        141.4 341.4
                        100 373.2
                        51.8 393.2
                        0 400
                    }
                    station B at 300 like A
                }
                """;
        assertThat(found(circle.formatted("148.2"))).isEmpty();
        assertThat(found(circle.formatted("168.2"))).singleElement().asString().startsWith("MW106 this point of A stands").contains("slip of the pen");
    }

    @Test void aSharpCornerUnderMatIsToldOnceWithItsRadius() {
        String box = STOCK + """
                plug P {
                    half sections
                    station A at 0 { 0 0 100 0 knuckle#R 100 50 knuckle#R 0 50 }
                    station B at 400 like A
                    skin OnePly { }
                }
                """;
        assertThat(found(box.replace("#R", ""))).singleElement().asString().startsWith("MW105 outside corner of A near 100 mm out, 0").contains("radius 3 mm at least");
        assertThat(found(box.replace("#R", " radius 6"))).isEmpty();
        assertThat(found(box.replace("#R", " radius 2"))).singleElement().asString().startsWith("MW105 corner of A rounded to 2 mm");
    }

    @Test void aLocalPlyThatStepsMoreThanHalfAMillimetreIsTold() { // 450 g at 28.6 % glass is 1.11 mm (ISO 12215-5)
        assertThat(found(cylinder("skin OnePly { bay A to B add ply Csm450 }"))).singleElement().asString()
                .startsWith("MW205 step of 1.11 mm where the ply of Csm450 from A to B end");
    }

    @Test void anAcceptanceOfNothingIsTold() {
        assertThat(found(cylinder("carve { board 1200 } accept MW431 \"two boards are joined\""))).singleElement().asString()
                .startsWith("MW923 nothing is found that `MW431` would accept");
    }

    private static String priced(String more) {
        return cylinder(more).replace("pot 1 kg at most", "pot 1 kg at most pack 40 kg at 310.00");
    }

    @Test void aMaterialWithoutAPriceIsToldWhereOthersHaveOne() {
        assertThat(found(priced("fill Pour36 solid { } skin OnePly { }"))).singleElement().asString()
                .startsWith("MW805 Csm450, Ortho, Mekp are ordered without a pack and its price");
        assertThat(found(priced("fill Pour36 solid { }"))).isEmpty();
        assertThat(found(cylinder("fill Pour36 solid { } skin OnePly { }"))).isEmpty();
    }

    @Test void aPlugHeavierThanItsCrewShouldLiftIsTold() { // guideline of 25 kg each
        String large = "fill Pour36 solid { }";
        assertThat(found(cylinder(large).replace("200 by 400", "600 by 1200"))).anySatisfy(finding -> assertThat(finding)
                .startsWith("MW806 a plug of").contains("2 people or gear", "the crew is 1", "weigh it first"));
        assertThat(found(cylinder("crew 2 " + large).replace("200 by 400", "600 by 1200"))).noneMatch(finding -> finding.startsWith("MW806"));
    }

    @Test void aPriceInAnotherCurrencyIsTold() {
        String text = "library stock.test currency USD\n" + priced("currency EUR fill Pour36 solid { }");
        assertThat(found(text)).anySatisfy(finding -> assertThat(finding).startsWith("MW803 Pour36 is priced in USD, the job in EUR"));
        assertThat(found(text.replace("currency EUR", "currency USD"))).noneMatch(finding -> finding.startsWith("MW803"));
    }

    @Test void aMaterialSoldInAnotherMeasureThanItIsUsedInIsTold() {
        String fill = "fill Pour36 solid { }";
        assertThat(found(cylinder(fill).replace("pot 1 kg at most", "pot 1 kg at most pack 40 l at 310.00"))).singleElement().asString()
                .startsWith("MW804 Pour36 is used by mass and sold by volume");
        assertThat(found(priced(fill))).isEmpty();
    }

    @Test void aDayOfMoreHoursThanAClockHasIsTold() {
        assertThat(found(cylinder("day 25 h fill Pour36 solid { }"))).singleElement().asString().startsWith("MW906 a working day is 24 h at most");
        assertThat(found(cylinder("day 24 h fill Pour36 solid { }"))).isEmpty();
    }

    @Test void aRateThatTakesDecadesIsTold() { // a square centimetre takes a worker's life
        assertThat(found("rates Slow { carve 1e-6 m2/h }\n" + cylinder("rates Slow fill Pour36 solid { } carve { }")))
                .anySatisfy(finding -> assertThat(finding).startsWith("MW802 ").contains("would take decades"));
    }

    @Test void twoStationsAHairApartStandAtOnePlace() {
        for (String x : new String[] {"1e-320", "1e-300", "0.0001"})
            assertThat(found(cylinder("fill Pour36 solid { }").replace("station B at 300", "station B at " + x)))
                    .singleElement().asString().startsWith("MW103 B:");
    }

    @Test void aSlipInAFigureIsToldAloneAndNotWhatFollowsFromIt() {
        String slip = cylinder("frame { sheet Ply12 measured 12 } fill Pour36 solid { } carve { }").replace("station B at 300 like A", "station B at 3000 like A");
        assertThat(found(slip)).allSatisfy(finding -> assertThat(finding).startsWith("MW10"));
    }
}
