package mouldwright.plan.read;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.AREAL_MASS;
import static mouldwright.units.Dimension.AREA_RATE;
import static mouldwright.units.Dimension.COVERAGE_MASS;
import static mouldwright.units.Dimension.COVERAGE_VOLUME;
import static mouldwright.units.Dimension.DENSITY;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TEMPERATURE;
import static mouldwright.units.Dimension.TIME;
import static mouldwright.units.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import mouldwright.model.Amount;
import mouldwright.model.Document;
import mouldwright.model.Pack;
import mouldwright.model.PlugPackage;
import mouldwright.model.Proportion;
import mouldwright.model.Range;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Consumable;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Filler;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Hardener;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Material;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Sheet;
import mouldwright.units.Dimension;
import mouldwright.units.Units;
import org.eclipse.emf.ecore.EObject;

/** Reads materials, each once. What an entry must state and does not is reported; the rest has its default. */
final class MaterialReader {

    private final FigureReader figures;
    private final Map<EObject, Object> read = new IdentityHashMap<>();

    MaterialReader(FigureReader figures) {
        this.figures = figures;
    }

    Resin resin(mouldwright.model.Resin m) {
        return once(m, r -> new Resin(m.getName(), figures.given("resin density", DENSITY, m.getDensity()).orElseGet(Defaults::liquidResin),
                figures.given("cured resin density", DENSITY, m.getCured()).orElseGet(Defaults::curedResin),
                figures.given("styrene", RATIO, m.getStyrene()), m.isWaxed() && !m.isUnwaxed(),
                Optional.ofNullable(m.getHardener()).filter(h -> !h.eIsProxy()).map(this::hardener),
                figures.given("least catalyst", RATIO, m.getCatalystLow()),
                figures.given("most catalyst", RATIO, m.getCatalystHigh()), gel(m),
                figures.given("resin pot", MASS, m.getPot()), figures.given("recoat", TIME, m.getRecoat()),
                figures.given("hard", TIME, m.getHard()), stock(m)));
    }

    private List<Resin.GelRow> gel(mouldwright.model.Resin m) {
        List<Resin.GelRow> rows = new ArrayList<>();
        if (m.getGel() != null)
            m.getGel().getRows().forEach(row -> {
                Optional<Double> temperature = figures.si(TEMPERATURE, row.getTemperature());
                Optional<Double> catalyst = figures.si(RATIO, row.getCatalyst());
                Optional<Double> time = figures.si(TIME, row.getTime());
                if (temperature.isPresent() && catalyst.isPresent() && time.isPresent())
                    rows.add(new Resin.GelRow(temperature.get(), catalyst.get(), time.get(), figures.origin(row)));
            });
        return rows;
    }

    Hardener hardener(mouldwright.model.Hardener m) {
        return once(m, h -> new Hardener(m.getName(),
                figures.given("catalyst density", DENSITY, m.getDensity()).orElseGet(Defaults::hardenerDensity), stock(m)));
    }

    Mat mat(mouldwright.model.Mat m) {
        return once(m, x -> new Mat(m.getName(),
                required("areal mass of " + m.getName(), AREAL_MASS, m.getAreal(), m, PlugPackage.Literals.MAT__AREAL),
                figures.given("glass share of " + m.getName(), RATIO, m.getGlass()).orElseGet(Defaults::glassShare), Defaults.glassDensity(),
                figures.given("roll width of " + m.getName(), LENGTH, m.getWidth()), figures.given("roll length of " + m.getName(), LENGTH, m.getLength()),
                figures.given("lay rate of " + m.getName(), AREA_RATE, m.getLay()), stock(m)));
    }

    Foam foam(mouldwright.model.Foam m) {
        return once(m, f -> new Foam(m.getName(), figures.given("expansion", RATIO, m.getExpansion()),
                required("foam density", DENSITY, m.getDensity(), m, PlugPackage.Literals.FOAM__DENSITY), ratio(m),
                figures.given("density of A", DENSITY, m.getDensityA()), figures.given("density of B", DENSITY, m.getDensityB()),
                figures.given("cream time", TIME, m.getCream()), figures.given("rise time", TIME, m.getRise()),
                figures.given("firm time", TIME, m.getFirm()), figures.given("carve after", TIME, m.getCarve()),
                figures.given("lift", LENGTH, m.getLift()), figures.given("foam pot", MASS, m.getPot()),
                figures.given("coldest", TEMPERATURE, m.getColdest()), figures.given("warmest", TEMPERATURE, m.getWarmest()),
                yields(m), stock(m)));
    }

    private Optional<Foam.Ratio> ratio(mouldwright.model.Foam m) {
        Optional<Double> a = figures.si(RATIO, m.getRatioA());
        Optional<Double> b = figures.si(RATIO, m.getRatioB());
        if (a.isEmpty() || b.isEmpty())
            return Optional.empty();
        if (!(a.get() > 0 && b.get() > 0)) {
            figures.report(ReadProblem.Kind.NUMBER, m, PlugPackage.Literals.FOAM__RATIO_A, "the parts of a mix must be above zero");
            return Optional.empty();
        }
        return Optional.of(new Foam.Ratio(a.get(), b.get(), m.getBy() == Proportion.VOLUME,
                figures.origin(m, PlugPackage.Literals.FOAM__RATIO_A)));
    }

    private List<Foam.YieldRow> yields(mouldwright.model.Foam m) {
        List<Foam.YieldRow> rows = new ArrayList<>();
        if (m.getYields() != null)
            m.getYields().getRows().forEach(row -> {
                Optional<Double> temperature = figures.si(TEMPERATURE, row.getTemperature());
                Optional<Double> share = figures.si(RATIO, row.getShare());
                if (temperature.isPresent() && share.isPresent())
                    rows.add(new Foam.YieldRow(temperature.get(), share.get(), figures.origin(row)));
            });
        return rows;
    }

    Filler filler(mouldwright.model.Filler m) {
        return once(m, f -> new Filler(m.getName(), figures.given("filler density", DENSITY, m.getDensity()),
                figures.given("layer", LENGTH, m.getLayer()), figures.given("total", LENGTH, m.getTotal()),
                figures.given("hard", TIME, m.getHard()), stock(m)));
    }

    Coating coating(mouldwright.model.Coating m) {
        return once(m, c -> new Coating(m.getName(), figures.given("density of " + m.getName(), DENSITY, m.getDensity()),
                figures.given("wet film of " + m.getName(), LENGTH, m.getWet()), figures.given("dry film of " + m.getName(), LENGTH, m.getDry()),
                figures.given("transfer of " + m.getName(), RATIO, m.getTransfer()), coverage(m),
                figures.given("styrene of " + m.getName(), RATIO, m.getStyrene()), figures.given("recoat", TIME, m.getRecoat()), curing(m), stock(m)));
    }

    private Optional<Coating.Curing> curing(mouldwright.model.Coating m) {
        if (m.getHardener() == null || !figures.resolved(m.getHardener(), m, PlugPackage.Literals.COATING__HARDENER))
            return Optional.empty();
        Optional<Given> least = figures.given("least catalyst of " + m.getName(), RATIO, m.getCatalystLow());
        Optional<Given> most = figures.given("most catalyst of " + m.getName(), RATIO, m.getCatalystHigh());
        return least.flatMap(low -> most.map(high -> new Coating.Curing(hardener(m.getHardener()), low, high)));
    }

    /** Spread by mass or by volume, as its unit says. */
    private Optional<Given> coverage(mouldwright.model.Coating m) {
        if (m.getCoverage() == null)
            return Optional.empty();
        boolean byVolume = m.getCoverage().getLikely() instanceof mouldwright.model.Measure measure && measure.getUnit() != null
                && Units.find(measure.getUnit()).filter(unit -> unit.dimension().equals(COVERAGE_VOLUME)).isPresent();
        return figures.given("coverage of " + m.getName(), byVolume ? COVERAGE_VOLUME : COVERAGE_MASS, m.getCoverage());
    }

    Sheet sheet(mouldwright.model.Sheet m) {
        return once(m, s -> new Sheet(m.getName(), figures.given("sheet width", LENGTH, m.getWidth()).orElseGet(Defaults::sheetWidth),
                figures.given("sheet length", LENGTH, m.getLength()).orElseGet(Defaults::sheetLength),
                required("sheet thickness", LENGTH, m.getThickness(), m, PlugPackage.Literals.SHEET__THICKNESS),
                figures.given("sheet density", DENSITY, m.getDensity()).orElseGet(Defaults::sheetDensity),
                figures.given("kerf", LENGTH, m.getKerf()), figures.given("margin", LENGTH, m.getMargin()), grain(m), sheetStock(m), sizes(m)));
    }

    private List<Sheet.Size> sizes(mouldwright.model.Sheet m) {
        List<Sheet.Size> sizes = new ArrayList<>();
        for (mouldwright.model.SheetSize size : m.getAlso())
            figures.given("sheet width", LENGTH, size.getWidth()).ifPresent(width -> figures.given("sheet length", LENGTH, size.getLength()).ifPresent(length ->
                    sizes.add(new Sheet.Size(width, length, figures.number(size.getPrice(), size, PlugPackage.Literals.SHEET_SIZE__PRICE).map(OptionalDouble::of).orElse(OptionalDouble.empty())))));
        return sizes;
    }

    private static Sheet.Grain grain(mouldwright.model.Sheet m) {
        return m.isGrainAlong() ? Sheet.Grain.ALONG : m.isGrainAcross() ? Sheet.Grain.ACROSS : Sheet.Grain.ANY;
    }

    /** A sheet is sold by the piece: `each` is a pack of one. */
    private Material.Stock sheetStock(mouldwright.model.Sheet m) {
        Material.Stock stock = stock(m);
        Optional<Material.Pack> each = figures.number(m.getPrice(), m, PlugPackage.Literals.SHEET__PRICE)
                .map(price -> new Material.Pack(Given.of("pack", RATIO, 1, figures.origin(m, PlugPackage.Literals.SHEET__PRICE)),
                        price, currency(m)));
        return stock.pack().isPresent() ? stock
                : new Material.Stock(stock.title(), each, stock.source(), stock.review(), stock.origin());
    }

    Rates rates(mouldwright.model.Rates m) {
        return once(m, r -> new Rates(m.getName(), figures.given("carve", AREA_RATE, m.getCarve()),
                figures.given("fair", AREA_RATE, m.getFair()), sanding(m),
                figures.given("labour of a bulkhead", TIME, m.getPlate()), figures.given("labour of a pot", TIME, m.getPot()), figures.origin(m)));
    }

    Consumable consumable(mouldwright.model.Consumable m) {
        return once(m, c -> new Consumable(m.getName(), figures.given("area for one of " + m.getName(), AREA, m.getArea()),
                figures.given("labour for one of " + m.getName(), TIME, m.getLabour()),
                figures.given("pours for one of " + m.getName(), RATIO, m.getPours()),
                figures.given("pots for one of " + m.getName(), RATIO, m.getPots()), consumableStock(m)));
    }

    /** Consumables are sold by the piece, singly or in packs. */
    private Material.Stock consumableStock(mouldwright.model.Consumable m) {
        Material.Stock stock = stock(m);
        var pieces = figures.whole(m.getPieces(), m, PlugPackage.Literals.CONSUMABLE__PIECES);
        Optional<Material.Pack> pack = figures.number(m.getPrice(), m, PlugPackage.Literals.CONSUMABLE__PRICE).map(price -> new Material.Pack(
                Given.of("pack of " + m.getName(), RATIO, pieces.orElse(1), figures.origin(m, PlugPackage.Literals.CONSUMABLE__PRICE)),
                price, currency(m)));
        return new Material.Stock(stock.title(), pack, stock.source(), stock.review(), stock.origin());
    }

    private List<Rates.Sanding> sanding(mouldwright.model.Rates m) {
        List<Rates.Sanding> all = new ArrayList<>();
        m.getSands().forEach(sand -> {
            var grit = figures.whole(sand.getGrit(), sand, PlugPackage.Literals.SAND_RATE__GRIT);
            figures.given("sanding rate", AREA_RATE, sand.getRate()).filter(rate -> grit.isPresent())
                    .ifPresent(rate -> all.add(new Rates.Sanding(grit.getAsInt(), rate)));
        });
        return all;
    }

    private Material.Stock stock(mouldwright.model.Material m) {
        Optional<Material.Pack> pack = m.getPacks().isEmpty() ? Optional.empty() : pack(m.getPacks().getFirst(), m);
        return new Material.Stock(Optional.ofNullable(m.getLabel()), pack, Optional.ofNullable(m.getSource()),
                figures.date(m.getReview(), m, PlugPackage.Literals.MATERIAL__REVIEW), figures.origin(m));
    }

    private Optional<Material.Pack> pack(Pack pack, EObject entry) {
        Optional<Double> price = figures.number(pack.getPrice(), pack, PlugPackage.Literals.PACK__PRICE);
        Optional<Given> size = figures.given("pack", packDimension(pack.getSize()), pack.getSize());
        return price.flatMap(p -> size.map(s -> new Material.Pack(s, p, currency(entry))));
    }

    private static Dimension packDimension(Amount size) {
        Optional<Dimension> stated = size instanceof mouldwright.model.Measure measure && measure.getUnit() != null
                ? Units.find(measure.getUnit()).map(unit -> unit.dimension()) : Optional.empty();
        return stated.filter(VOLUME::equals).orElse(MASS);
    }

    private static String currency(EObject entry) {
        EObject top = entry;
        while (top.eContainer() != null)
            top = top.eContainer();
        boolean stated = top instanceof Document document && !document.getHeaders().isEmpty()
                && document.getHeaders().getFirst().getCurrency() != null;
        return stated ? ((Document) top).getHeaders().getFirst().getCurrency() : "";
    }

    private Given required(String name, Dimension dimension, Range range, EObject owner,
            org.eclipse.emf.ecore.EStructuralFeature feature) {
        if (range == null)
            figures.missing(owner, feature);
        return figures.given(name, dimension, range)
                .orElseGet(() -> Given.of(name, dimension, 1, figures.origin(owner))); // never used: the problem is blocking
    }

    @SuppressWarnings("unchecked")
    private <M extends EObject, T> T once(M entry, Function<M, T> reader) {
        if (!read.containsKey(entry))
            read.put(entry, reader.apply(entry));
        return (T) read.get(entry);
    }
}
