package mouldwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules of the house that the manifests alone do not keep; which bundle may use which is written there and held by the build. */
class HouseRulesTest {

    /** The engine's bundles, each of which may use those before it. */
    private static final List<String> FLOORS = List.of("units", "geometry", "process", "exchange", "project", "model", "plan", "check", "language", "language.ide", "drawing", "report", "services", "cli");

    private static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .withImportOption((Location location) -> location.contains("mouldwright") && !location.contains("house.tests"))
            .importPackages("mouldwright");

    /** Written by hand: not the parser, serializer and model code that the build generates. */
    private static boolean isOurs(JavaClass type) {
        return !type.getPackageName().startsWith("mouldwright.model") && !type.getPackageName().contains(".antlr.")
                && !type.getPackageName().endsWith(".serializer") && !type.getPackageName().endsWith("language.services") && !type.getPackageName().endsWith("language.scoping");
    }

    static List<String> floors() {
        return FLOORS;
    }

    @ParameterizedTest
    @MethodSource("floors")
    void aBundleUsesOnlyThoseBelowIt(String floor) {
        String[] above = FLOORS.stream().skip(FLOORS.indexOf(floor) + 1L).map(name -> "mouldwright." + name + "..").toArray(String[]::new);
        String[] within = FLOORS.stream().filter(other -> other.startsWith(floor + ".")).map(name -> "mouldwright." + name + "..").toArray(String[]::new);
        if (above.length > 0)
            noClasses().that().resideInAPackage("mouldwright." + floor + "..").and().resideOutsideOfPackages(within).should().dependOnClassesThat().resideInAnyPackage(above).check(ALL);
    }

    @Test void geometryAndProcessKnowNeitherUnitsNorModels() {
        noClasses().that().resideInAnyPackage("mouldwright.geometry..", "mouldwright.process..")
                .should().dependOnClassesThat().resideInAnyPackage("mouldwright.units..", "org.eclipse..").check(ALL);
    }

    @Test void onlyTheReadingOfSpecsKnowsTheModel() {
        noClasses().that().resideInAPackage("mouldwright.plan..").and().resideOutsideOfPackage("mouldwright.plan.read..")
                .should().dependOnClassesThat().resideInAnyPackage("mouldwright.model..", "org.eclipse..").check(ALL);
    }

    @Test void onlyTheWorkbenchNeedsAWindow() {
        noClasses().that().resideOutsideOfPackage("mouldwright.workbench..").should().dependOnClassesThat()
                .resideInAnyPackage("org.eclipse.swt..", "org.eclipse.jface..", "org.eclipse.ui..", "org.eclipse.core.resources..", "org.eclipse.core.runtime..", "mouldwright.workbench..").check(ALL);
        noClasses().should().dependOnClassesThat().resideInAnyPackage("java.awt..", "javax.swing..").check(ALL);
    }

    @Test void theEditorKnowsNoViewsAndNeitherKnowsTheProduct() {
        noClasses().that().resideInAPackage("mouldwright.workbench.editor..").should().dependOnClassesThat().resideInAnyPackage("mouldwright.workbench.views..", "mouldwright.workbench").check(ALL);
        noClasses().that().resideInAPackage("mouldwright.workbench.views..").should().dependOnClassesThat().resideInAPackage("mouldwright.workbench").check(ALL);
        noClasses().that().resideInAPackage("mouldwright.workbench..").should().dependOnClassesThat().resideInAPackage("mouldwright.cli..").check(ALL);
    }

    @Test void viewsShowThePlanAndNeverAskTheLanguage() {
        noClasses().that().resideInAPackage("mouldwright.workbench.views..").should().dependOnClassesThat()
                .resideInAnyPackage("mouldwright.language..", "mouldwright.model..", "mouldwright.services..", "org.eclipse.xtext..", "org.eclipse.emf..").check(ALL);
    }

    @Test void whatIsPaintedKnowsNoPlan() {
        noClasses().that().resideInAPackage("mouldwright.workbench.views.paint..").should().dependOnClassesThat().resideInAnyPackage("mouldwright.plan..", "mouldwright.workbench.editor..").check(ALL);
    }

    @Test void nothingNeedsANetwork() {
        noClasses().should().dependOnClassesThat().resideInAnyPackage("java.net.http..", "javax.net..").check(ALL);
    }

    @Test void packagesHaveNoCircles() {
        for (String floor : FLOORS)
            if (!floor.equals("model") && !floor.equals("language"))
                slices().matching("mouldwright." + floor + ".(**)").should().beFreeOfCycles().allowEmptyShould(true).check(ALL);
        slices().matching("mouldwright.workbench.(**)").should().beFreeOfCycles().check(ALL);
    }

    @Test void namesSayWhatAClassIs() {
        noClasses().that(new com.tngtech.archunit.base.DescribedPredicate<JavaClass>("are written by hand") {
            @Override public boolean test(JavaClass type) {
                return isOurs(type);
            }
        }).should().haveSimpleNameEndingWith("Util").orShould().haveSimpleNameEndingWith("Utils").orShould().haveSimpleNameEndingWith("Helper")
                .orShould().haveSimpleNameEndingWith("Manager").check(ALL);
    }

    @Test void recordsAndEnumsOfTheSpecAreAllThereIs() {
        classes().that().resideInAPackage("mouldwright.plan.spec").and().areTopLevelClasses().and().haveSimpleNameNotEndingWith("Defaults").and().doNotHaveSimpleName("package-info")
                .should().beRecords().orShould().beInterfaces().orShould().beEnums().check(ALL);
    }
}
