package mouldwright.language.ide;

import static mouldwright.model.PlugPackage.Literals.*;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import mouldwright.plan.spec.BodyDefaults;
import mouldwright.plan.spec.FairDefaults;
import mouldwright.plan.spec.FillDefaults;
import mouldwright.plan.spec.FinishDefaults;
import mouldwright.plan.spec.FrameDefaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.LaminateDefaults;
import mouldwright.plan.spec.MouldDefaults;
import mouldwright.plan.spec.ShopDefaults;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What is reckoned with where a spec leaves a property out. */
final class StatedDefaults {

    private static final Map<EStructuralFeature, Supplier<Given>> ALL = all();

    private StatedDefaults() { }

    /** The default of a property; empty if it has none that is one figure. */
    static Optional<Given> of(EStructuralFeature feature) {
        return Optional.ofNullable(ALL.get(feature)).map(Supplier::get);
    }

    private static Map<EStructuralFeature, Supplier<Given>> all() {
        Map<EStructuralFeature, Supplier<Given>> all = new LinkedHashMap<>();
        all.put(PLUG__SHOP, ShopDefaults::shopTemperature);
        all.put(PLUG__CREW, ShopDefaults::persons);
        all.put(PLUG__DAY, ShopDefaults::day);
        all.put(PLUG__SHRINK, BodyDefaults::shrink);
        all.put(SUPERELLIPSE__EXPONENT, BodyDefaults::exponent);
        all.put(SUPERELLIPSE__ABOVE, BodyDefaults::above);
        all.put(FRAME__CLEARANCE, FrameDefaults::clearance);
        all.put(FRAME__RIM, FrameDefaults::rim);
        all.put(FRAME__TOLERANCE, FrameDefaults::tolerance);
        all.put(FRAME__HOLES, FrameDefaults::holes);
        all.put(FRAME__GAUGE, FrameDefaults::gauge);
        all.put(JOIN__SLOPE, FrameDefaults::scarf);
        all.put(BASE__MARGIN, FrameDefaults::baseMargin);
        all.put(FILL__OVERFILL, FillDefaults::overfill);
        all.put(CARVE__BOARD, FairDefaults::board);
        all.put(CARVE__CROWN, FairDefaults::crownLimit);
        all.put(SKIN__LAP, LaminateDefaults::lap);
        all.put(SKIN__GEL, LaminateDefaults::gel);
        all.put(SKIN__ON_FOAM, LaminateDefaults::onFoam);
        all.put(FINISH__SANDED, FinishDefaults::sandedShare);
        all.put(MOULD__DRAFT, MouldDefaults::draft);
        all.put(MOULD__FLANGE, MouldDefaults::flange);
        all.put(MOULD__HOLD, MouldDefaults::hold);
        all.put(AIR__LIMIT, ShopDefaults::airLimit);
        all.put(AIR__MIXING, ShopDefaults::airMixing);
        all.put(MAT__GLASS, LaminateDefaults::glassShare);
        all.put(MAT__LAY, LaminateDefaults::layRate);
        all.put(MAT__WIDTH, LaminateDefaults::rollWidth);
        all.put(SHEET__WIDTH, FrameDefaults::sheetWidth);
        all.put(SHEET__LENGTH, FrameDefaults::sheetLength);
        all.put(SHEET__DENSITY, FrameDefaults::sheetDensity);
        all.put(SHEET__KERF, FrameDefaults::kerf);
        all.put(SHEET__MARGIN, FrameDefaults::margin);
        all.put(RESIN__DENSITY, LaminateDefaults::liquidResin);
        all.put(RESIN__CURED, LaminateDefaults::curedResin);
        all.put(RESIN__POT, LaminateDefaults::resinPot);
        all.put(HARDENER__DENSITY, LaminateDefaults::hardenerDensity);
        all.put(FOAM__EXPANSION, FillDefaults::expansion);
        all.put(FOAM__POT, FillDefaults::foamPot);
        all.put(FOAM__CREAM, FillDefaults::creamTime);
        all.put(FOAM__LIFT, FillDefaults::lift);
        all.put(FOAM__FIRM, FillDefaults::firm);
        all.put(COATING__WET, FinishDefaults::wetFilm);
        all.put(COATING__TRANSFER, FinishDefaults::transfer);
        return all;
    }
}
