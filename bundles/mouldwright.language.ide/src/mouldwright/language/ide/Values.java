package mouldwright.language.ide;

import static mouldwright.model.PlugPackage.Literals.*;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.model.Document;
import mouldwright.model.Frame;
import mouldwright.model.LibraryHeader;
import mouldwright.model.Measure;
import mouldwright.model.Sheet;
import mouldwright.model.Use;
import mouldwright.language.linking.Libraries;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.EcoreUtil2;

/** Values a property commonly has: its default, and what can be bought. */
final class Values {

    /** Common sizes, by the property they are for. */
    private static final Map<EStructuralFeature, List<String>> COMMON = common();

    private final Libraries libraries;

    @com.google.inject.Inject
    Values(Libraries libraries) {
        this.libraries = libraries;
    }

    private static Map<EStructuralFeature, List<String>> common() {
        Map<EStructuralFeature, List<String>> all = new LinkedHashMap<>();
        // Nominal thicknesses plywood is commonly made in.
        all.put(SHEET__THICKNESS, List.of("4 mm", "6.5 mm", "9 mm", "12 mm", "15 mm", "18 mm", "21 mm", "24 mm"));
        // Chopped strand mat as it is commonly sold, in metric and in US weights.
        all.put(MAT__AREAL, List.of("225 g/m2", "300 g/m2", "450 g/m2", "600 g/m2", "0.75 oz/ft2", "1 oz/ft2", "1.5 oz/ft2", "2 oz/ft2"));
        // Grits of ISO 6344 that follow each other when a plug is sanded.
        List<String> grits = List.of("40", "60", "80", "100", "120", "150", "180", "220", "240", "320", "400", "500", "600", "800", "1000", "1200");
        all.put(GRIT__NUMBER, grits);
        all.put(SAND_RATE__GRIT, grits);
        all.put(PLUG__UNITS, List.of("mm", "cm", "m", "in", "ft"));
        all.put(PLUG__WAGE_PER, List.of("h", "min", "d"));
        all.put(PLUG__CURRENCY, List.of("EUR", "USD", "GBP"));
        all.put(LIBRARY_HEADER__CURRENCY, List.of("EUR", "USD", "GBP"));
        all.put(CALL__FUNCTION, List.of("min", "max"));
        return all;
    }

    /** Values for what is expected. */
    List<Proposal> of(SpecView view, Expectation expected, Cursor.At at) {
        List<Proposal> result = new ArrayList<>();
        List<EStructuralFeature> features = expected.features();
        if (features.isEmpty()) {
            return result;
        }
        EStructuralFeature property = expected.kind().equals("NUMBER") ? expected.amount().orElse(features.getFirst()) : features.getFirst();
        StatedDefaults.of(property).ifPresent(given -> result.add(value(given)));
        COMMON.getOrDefault(property, List.of()).forEach(word -> result.add(Proposal.plain(Proposal.Kind.VALUE, word, "", "")));
        if (property == FRAME__MEASURED) {
            thickness(at).ifPresent(result::add);
        } else if (property == ACCEPT__CODE) {
            view.codes().stream().sorted().forEach(code -> result.add(Proposal.plain(Proposal.Kind.VALUE, code, "found in this spec", "")));
        } else if (property == USE__VERSION) {
            version(view, at).ifPresent(result::add);
        }
        return result;
    }

    private static Proposal value(Given given) {
        boolean count = given.dimension().equals(Dimension.RATIO) && given.likely() == Math.rint(given.likely()) && given.likely() != 0;
        String words = count ? Display.number(given.likely()) : Display.of(UnitSystem.METRIC).format(given.likely(), given.dimension());
        String why = given.origin() instanceof Origin.Assumed(String reason) ? reason : "";
        return Proposal.plain(Proposal.Kind.VALUE, words, "assumed where nothing is stated", why);
    }

    /** The nominal thickness of the sheet just named, to begin with. */
    private static Optional<Proposal> thickness(Cursor.At at) {
        Frame frame = at.context().map(part -> EcoreUtil2.getContainerOfType(part, Frame.class)).orElse(null);
        if (frame == null || !(frame.getSheet() instanceof Sheet sheet) || sheet.getThickness() == null || !(sheet.getThickness().getLikely() instanceof Measure measure)) {
            return Optional.empty();
        }
        String words = measure.getNumber() + (measure.getUnit() == null ? "" : " " + measure.getUnit());
        return Optional.of(Proposal.plain(Proposal.Kind.VALUE, words, "nominal thickness of " + sheet.getName(), "Measure the sheet: plywood is often thinner than its name."));
    }

    private Optional<Proposal> version(SpecView view, Cursor.At at) {
        EObject part = at.context().orElse(null);
        Use use = part == null ? null : EcoreUtil2.getContainerOfType(part, Use.class);
        if (use == null || use.getLibrary() == null || !(libraries.find(view.resource(), use.getLibrary()) instanceof Libraries.Found.Loaded(Document library))) {
            return Optional.empty();
        }
        return library.getHeaders().stream().map(LibraryHeader::getVersion).filter(java.util.Objects::nonNull).findFirst()
                .map(version -> Proposal.plain(Proposal.Kind.VALUE, '"' + version + '"', "version of the library as it is", ""));
    }
}
