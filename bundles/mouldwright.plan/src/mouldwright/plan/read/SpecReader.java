package mouldwright.plan.read;

import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TEMPERATURE;
import static mouldwright.units.Dimension.TIME;
import static mouldwright.units.Dimension.VOLUME_RATE;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.model.Plug;
import mouldwright.model.PlugPackage.Literals;
import mouldwright.plan.spec.Acceptance;
import mouldwright.plan.spec.Airing;
import mouldwright.plan.spec.Consumable;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.ShopDefaults;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Survey;
import mouldwright.plan.spec.Wanted;
import mouldwright.plan.spec.WorkingWeek;
import mouldwright.plan.spec.Workshop;
import mouldwright.units.Dimension;
import mouldwright.units.Unit;
import mouldwright.units.Units;

/** Reads a plug of the model into a spec. */
public final class SpecReader {

    private static final double SECONDS_PER_HOUR = 3600;

    private final TextPlaces places;
    private final SectionFiles files;
    private final SectionMemo memo;

    /** For specs that take no section from a table or drawing.
     *  @param places where parts of the model stand in the text */
    public SpecReader(TextPlaces places) {
        this(places, SectionFiles.NONE, new SectionMemo());
    }

    /** @param places where parts of the model stand in the text
     *  @param files  where tables and drawings are read
     *  @param memo   what was read of them before */
    public SpecReader(TextPlaces places, SectionFiles files, SectionMemo memo) {
        this.places = places;
        this.files = files;
        this.memo = memo;
    }

    /** Reads a plug.
     *  @param m       the plug
     *  @param surveys of it, in the order of the text
     *  @return the spec, or why there is none; never an exception, whatever the model */
    public Reading read(Plug m, List<mouldwright.model.Survey> surveys) {
        Problems problems = new Problems();
        FigureReader figures = new FigureReader(new Formulas(problems), places, problems);
        MaterialReader materials = new MaterialReader(figures);
        LaminateReader laminates = new LaminateReader(figures, materials);
        BodyReader bodies = new BodyReader(figures, new SectionReader(figures, files, memo));
        BlockReader blocks = new BlockReader(figures, materials, laminates, bodies);
        SurveyReader surveyed = new SurveyReader(figures, bodies);
        List<Survey> read = new ArrayList<>();
        surveys.forEach(survey -> surveyed.survey(survey).ifPresent(read::add));
        Optional<Schedule> part = m.getPart() == null ? Optional.empty() : laminates.schedule(m.getPart(), m, Literals.PLUG__PART);
        Spec spec = new Spec(m.getName() == null ? "" : m.getName(), Optional.ofNullable(m.getLabel()), workshop(m, figures, materials),
                bodies.body(m), part, blocks.frame(m.getFrame()), blocks.fill(m.getFill()), blocks.carve(m.getCarve()),
                blocks.skin(m.getSkin()), blocks.finish(m.getFinish()), blocks.mould(m.getMould()), accepted(m, figures), read,
                figures.tacit(), figures.origin(m));
        return new Reading(problems.blocking() ? Optional.empty() : Optional.of(spec), problems.all());
    }

    private static Workshop workshop(Plug m, FigureReader figures, MaterialReader materials) {
        Optional<Rates> rates = m.getRates() != null && figures.resolved(m.getRates(), m, Literals.PLUG__RATES)
                ? Optional.of(materials.rates(m.getRates())) : Optional.empty();
        var crew = figures.whole(m.getCrew(), m, Literals.PLUG__CREW);
        Given persons = crew.isPresent()
                ? Given.of("crew", RATIO, crew.getAsInt(), figures.origin(m, Literals.PLUG__CREW)) : Defaults.persons();
        Given shop = figures.given("shop temperature", TEMPERATURE, m.getShop()).orElseGet(Defaults::shopTemperature);
        return new Workshop(shop, persons, wage(m, figures), figures.given("working day", TIME, m.getDay()).orElseGet(Defaults::day),
                figures.date(m.getStart(), m, Literals.PLUG__START), rates, m.getCurrency() == null ? "" : m.getCurrency(),
                week(m, figures), air(m.getAir(), shop, figures), consumables(m, figures, materials), wanted(m, figures));
    }

    private static Wanted wanted(Plug m, FigureReader figures) {
        return new Wanted(figures.date(m.getReadyBy(), m, Literals.PLUG__READY_BY), figures.date(m.getReadyAfter(), m, Literals.PLUG__READY_AFTER),
                figures.origin(m, Literals.PLUG__READY_BY), figures.origin(m, Literals.PLUG__READY_AFTER));
    }

    private static WorkingWeek week(Plug m, FigureReader figures) {
        return m.getWork() == null ? ShopDefaults.week() : new WorkingWeek(DayOfWeek.of(m.getWork().getFrom().getValue() + 1),
                DayOfWeek.of(m.getWork().getTo().getValue() + 1), figures.origin(m.getWork()));
    }

    private static Airing air(mouldwright.model.Air m, Given shop, FigureReader figures) {
        if (m == null)
            return ShopDefaults.air(shop);
        return new Airing(figures.given("styrene limit in the air", RATIO, m.getLimit()).orElseGet(ShopDefaults::airLimit),
                figures.given("mixing factor of the air", RATIO, m.getMixing()).orElseGet(ShopDefaults::airMixing),
                figures.given("temperature of the air", TEMPERATURE, m.getTemperature()).orElse(shop),
                figures.given("fresh air of the shop", VOLUME_RATE, m.getSupply()));
    }

    private static List<Consumable> consumables(Plug m, FigureReader figures, MaterialReader materials) {
        List<Consumable> all = new ArrayList<>();
        m.getConsumables().forEach(one -> {
            if (figures.resolved(one, m, Literals.PLUG__CONSUMABLES))
                all.add(materials.consumable(one));
        });
        return all;
    }

    /** Money per person and hour, whatever unit of time the spec names. */
    private static Optional<Given> wage(Plug m, FigureReader figures) {
        if (m.getWage() == null)
            return Optional.empty();
        Optional<Unit> per = m.getWagePer() == null ? Units.find("h") : Units.find(m.getWagePer());
        if (per.isEmpty() || !per.get().dimension().equals(Dimension.TIME)) {
            figures.report(ReadProblem.Kind.DIMENSION, m, Literals.PLUG__WAGE_PER, "a wage is per hour, or per another time");
            return Optional.empty();
        }
        double hours = per.get().toSi(1) / SECONDS_PER_HOUR;
        return figures.si(RATIO, m.getWage())
                .map(money -> Given.of("wage per hour", RATIO, money / hours, figures.origin(m, Literals.PLUG__WAGE)));
    }

    private static List<Acceptance> accepted(Plug m, FigureReader figures) {
        List<Acceptance> all = new ArrayList<>();
        m.getAccepts().forEach(accept -> {
            if (accept.getCode() != null)
                all.add(new Acceptance(accept.getCode(), accept.getReason() == null ? "" : accept.getReason(),
                        figures.date(accept.getUntil(), accept, Literals.ACCEPT__UNTIL), figures.origin(accept)));
        });
        return all;
    }
}
