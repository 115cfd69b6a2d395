package mouldwright.language.ide;

import static mouldwright.model.PlugPackage.Literals.*;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Given;
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
        all.put(PLUG__SHOP, Defaults::shopTemperature);
        all.put(PLUG__CREW, Defaults::persons);
        all.put(PLUG__DAY, Defaults::day);
        all.put(PLUG__SHRINK, Defaults::shrink);
        all.put(SUPERELLIPSE__EXPONENT, Defaults::exponent);
        all.put(SUPERELLIPSE__ABOVE, Defaults::above);
        all.put(FRAME__CLEARANCE, Defaults::clearance);
        all.put(FRAME__RIM, Defaults::rim);
        all.put(FRAME__TOLERANCE, Defaults::tolerance);
        all.put(FRAME__HOLES, Defaults::holes);
        all.put(FRAME__GAUGE, Defaults::gauge);
        all.put(JOIN__SLOPE, Defaults::scarf);
        all.put(BASE__MARGIN, Defaults::baseMargin);
        all.put(FILL__OVERFILL, Defaults::overfill);
        all.put(CARVE__BOARD, Defaults::board);
        all.put(CARVE__CROWN, Defaults::crownLimit);
        all.put(SKIN__LAP, Defaults::lap);
        all.put(SKIN__GEL, Defaults::gel);
        all.put(SKIN__ON_FOAM, Defaults::onFoam);
        all.put(FINISH__SANDED, Defaults::sandedShare);
        all.put(MOULD__DRAFT, Defaults::draft);
        all.put(MOULD__FLANGE, Defaults::flange);
        all.put(MOULD__HOLD, Defaults::hold);
        all.put(AIR__LIMIT, ShopDefaults::airLimit);
        all.put(AIR__MIXING, ShopDefaults::airMixing);
        all.put(MAT__GLASS, Defaults::glassShare);
        all.put(MAT__LAY, Defaults::layRate);
        all.put(MAT__WIDTH, Defaults::rollWidth);
        all.put(SHEET__WIDTH, Defaults::sheetWidth);
        all.put(SHEET__LENGTH, Defaults::sheetLength);
        all.put(SHEET__DENSITY, Defaults::sheetDensity);
        all.put(SHEET__KERF, Defaults::kerf);
        all.put(SHEET__MARGIN, Defaults::margin);
        all.put(RESIN__DENSITY, Defaults::liquidResin);
        all.put(RESIN__CURED, Defaults::curedResin);
        all.put(RESIN__POT, Defaults::resinPot);
        all.put(HARDENER__DENSITY, Defaults::hardenerDensity);
        all.put(FOAM__EXPANSION, Defaults::expansion);
        all.put(FOAM__POT, Defaults::foamPot);
        all.put(FOAM__CREAM, Defaults::creamTime);
        all.put(FOAM__LIFT, Defaults::lift);
        all.put(FOAM__FIRM, Defaults::firm);
        all.put(COATING__WET, Defaults::wetFilm);
        all.put(COATING__TRANSFER, Defaults::transfer);
        return all;
    }
}
