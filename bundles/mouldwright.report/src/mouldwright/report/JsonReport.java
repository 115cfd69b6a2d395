package mouldwright.report;

import java.io.IOException;
import java.util.List;
import mouldwright.geometry.draft.PartEdge;
import mouldwright.plan.Assumption;
import mouldwright.plan.PieceEntry;
import mouldwright.plan.PlateEntry;
import mouldwright.plan.PotEntry;
import mouldwright.plan.PourEntry;
import mouldwright.plan.Quantity;
import mouldwright.plan.draw.Draws;
import mouldwright.plan.spec.Survey;
import mouldwright.plan.stage.FairMeasures;
import mouldwright.plan.stage.MouldMeasures;

/**
 * An estimate as one JSON object, after the schema shipped beside it ({@code schema/estimate.schema.json}). Lengths in metres, areas in m2,
 * volumes in m3, masses in kg, times in minutes, angles in radians; every figure names its unit as a UCUM code.
 */
public final class JsonReport {

    private final FindingsJson findings;

    /** @param names how files are named in findings */
    public JsonReport(PathNames names) {
        this.findings = new FindingsJson(names);
    }

    /** The whole file. */
    public String print(Estimate estimate) {
        return JsonFile.print(json -> json.object(o -> {
            o.member("plug", estimate.plan().plug()).member("revision", estimate.revision());
            if (estimate.draws().isPresent()) {
                o.member("draws", d -> draws(d, estimate.draws().get()));
            }
            lists(o, estimate);
        }));
    }

    private static void draws(JsonFile json, Draws draws) throws IOException {
        json.object(o -> o.member("count", draws.count()).member("seed", String.valueOf(draws.seed())).member("figures", draws.figures()));
    }

    private void lists(JsonFile json, Estimate estimate) throws IOException {
        json.array("assumed", estimate.assumed(), JsonReport::assumed)
                .array("findings", estimate.findings(), findings::write)
                .array("cautions", cautions(estimate), JsonFile::text)
                .array("quantities", estimate.quantities(), (q, quantity) -> quantity(q, estimate, quantity))
                .array("plates", estimate.plates(), JsonReport::plate)
                .array("parts", estimate.parts(), FrameJson::part)
                .array("members", estimate.members(), FrameJson::member);
        if (estimate.alignment().isPresent()) {
            json.member("alignment", a -> FrameJson.alignment(a, estimate.alignment().get()));
        }
        json.array("pours", estimate.pours(), JsonReport::pour)
                .array("pourOrder", PourSteps.of(estimate), JsonReport::step)
                .array("remedies", Remedies.of(estimate), (r, place) -> remedy(r, estimate, place))
                .array("pots", estimate.pots(), JsonReport::pots)
                .array("pieces", estimate.pieces(), JsonReport::piece)
                .array("tasks", estimate.tasks(), ProgrammeJson::task)
                .array("orders", estimate.orders(), ProgrammeJson::order)
                .array("edges", edges(estimate), JsonReport::edge)
                .array("boards", boards(estimate), JsonReport::board);
    }

    private static List<String> cautions(Estimate estimate) {
        List<String> words = new java.util.ArrayList<>(estimate.cautions().stream().map(Caution::words).toList());
        if (!words.isEmpty()) {
            words.add(Caution.DEFERENCE);
        }
        return words;
    }

    private static void assumed(JsonFile json, Assumption assumption) throws IOException {
        json.object(o -> {
            o.member("name", assumption.name()).member("words", assumption.words());
            if (assumption.value().isPresent()) {
                boolean time = assumption.unit().equals("s");
                double value = assumption.value().getAsDouble();
                o.member("value", time ? Published.minutes(value) : value).member("unit", time ? "min" : assumption.unit());
            }
            o.member("reason", assumption.reason());
        });
    }

    private static void quantity(JsonFile json, Estimate estimate, Quantity quantity) throws IOException {
        json.object(o -> {
            o.member("id", quantity.id()).member("stage", quantity.stage()).member("label", quantity.label())
                    .member("value", quantity.published(quantity.value())).member("unit", quantity.ucum())
                    .member("low", quantity.published(quantity.low())).member("high", quantity.published(quantity.high()));
            var spread = estimate.draws().flatMap(draws -> draws.spread(quantity.id()));
            if (spread.isPresent()) {
                o.member("p10", quantity.published(spread.get().tenth())).member("p50", quantity.published(spread.get().half()))
                        .member("p90", quantity.published(spread.get().ninety()));
            }
            var derivation = estimate.plan().derivation(quantity.id());
            if (derivation.isPresent()) {
                o.member("derivation", d -> DerivationJson.write(d, derivation.get()));
            }
        });
    }

    private static void plate(JsonFile json, PlateEntry plate) throws IOException {
        json.object(o -> o.member("station", plate.station()).member("stands", plate.stands()).member("edges", plate.bevelled() ? "bevelled" : "square").member("thickness", plate.thickness())
                .member("gap", plate.gap()).member("gapNormal", plate.gapNormal())
                .array("outline", plate.outline(), (pairs, point) -> pairs.pair(point.y(), point.z()))
                .array("bevelLine", plate.bevelLine(), (pairs, point) -> pairs.pair(point.y(), point.z())));
    }

    private static void pour(JsonFile json, PourEntry pour) throws IOException {
        json.object(o -> o.member("bay", pour.bay()).member("lift", pour.lift()).member("volume", pour.volume())
                .member("liquid", pour.liquid()).member("mass", pour.mass()).member("a", pour.a()).member("b", pour.b())
                .member("pots", pour.pots()));
    }

    /** An edge of a part of the mould, with the part it belongs to. */
    private record Edge(String part, PartEdge edge) { }

    private static List<Edge> edges(Estimate estimate) {
        return estimate.plan().measurements().find(MouldMeasures.class).filter(mould -> estimate.stages().contains("mould")).stream().flatMap(mould -> mould.pieces().stream())
                .flatMap(piece -> piece.edges().stream().map(edge -> new Edge(piece.part().name().orElse(""), edge))).toList();
    }

    private static List<MouldMeasures.Board> boards(Estimate estimate) {
        return estimate.plan().measurements().find(MouldMeasures.class).filter(mould -> estimate.stages().contains("mould")).stream()
                .flatMap(mould -> mould.boards().stream()).toList();
    }

    private static void board(JsonFile json, MouldMeasures.Board board) throws IOException {
        json.object(o -> o.member("part", board.part().name().orElse("")).member("side", board.port() ? "port" : "starboard")
                .member("length", board.strip().length()).member("width", board.strip().width()).member("area", board.strip().area())
                .member("standOff", board.strip().standOff()).member("crowded", board.strip().crowded())
                .array("line", board.strip().line(), (pairs, point) -> pairs.pair(point.y(), point.z()))
                .array("outline", board.strip().outline(), (pairs, point) -> pairs.pair(point.y(), point.z())));
    }

    private static void edge(JsonFile json, Edge edge) throws IOException {
        boolean parting = edge.edge().kind() == PartEdge.Kind.PARTING;
        json.object(o -> o.member("part", edge.part()).member("kind", parting ? "parting" : "open")
                .member("side", edge.edge().port() ? "port" : "starboard").member("length", edge.edge().line().length())
                .array("line", edge.edge().line().points(), (triples, point) -> triples.triple(point.x(), point.y(), point.z())));
    }

    private static void step(JsonFile json, PourSteps.Line line) throws IOException {
        json.object(o -> {
            o.member("step", line.step()).member("act", line.act()).member("lies", line.lies());
            if (!line.bays().isEmpty()) {
                o.array("bays", List.of(line.bays().split(" ")), JsonFile::text);
            }
            if (line.lift() > 0) {
                o.member("lift", line.lift());
            }
            if (line.time().isPresent()) {
                o.member("wait", Published.minutes(line.time().getAsDouble()));
            }
        });
    }

    private static void remedy(JsonFile json, Estimate estimate, FairMeasures.Place place) throws IOException {
        json.object(o -> {
            o.member("number", place.number()).member("fault", place.fault().words()).member("where", place.where()).member("x", place.x())
                    .member("side", place.hand() == Survey.Hand.PORT ? "port" : "starboard").member("girth", place.share())
                    .member("depth", place.size().depth().likely()).array("plates", place.plates(), JsonFile::text)
                    .member("remedy", Remedies.word(place.remedy()));
            if (Remedies.count(place.remedy()) > 0) {
                o.member("count", Remedies.count(place.remedy()));
            }
            var amount = Remedies.amount(estimate, place);
            if (amount.isPresent()) {
                o.member("amount", amount.get().id());
            }
            o.member("measureAgain", place.toMeasure());
        });
    }

    private static void pots(JsonFile json, PotEntry entry) throws IOException {
        json.object(o -> o.member("laminate", entry.laminate()).member("ply", entry.ply()).member("mat", entry.mat()).member("resin", entry.resin())
                .member("pots", entry.pots()).member("first", entry.first().resin())
                .member("firstCatalyst", entry.first().catalyst()).member("firstCatalystVolume", entry.first().catalystVolume())
                .member("further", entry.further().resin()).member("furtherCatalyst", entry.further().catalyst())
                .member("furtherCatalystVolume", entry.further().catalystVolume()).member("most", entry.most())
                .member("gel", Published.minutes(entry.gel())).member("working", Published.minutes(entry.working())));
    }

    private static void piece(JsonFile json, PieceEntry piece) throws IOException {
        json.object(o -> o.member("piece", piece.piece()).member("laminate", piece.laminate()).member("ply", piece.ply()).member("mat", piece.mat()).member("where", piece.where())
                .member("width", piece.width()).member("length", piece.length()).member("roll", piece.roll()).member("cut", piece.cut())
                .member("along", piece.along()).member("across", piece.across()));
    }
}
