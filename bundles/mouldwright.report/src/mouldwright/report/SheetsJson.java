package mouldwright.report;

import java.io.IOException;
import java.util.List;
import mouldwright.geometry.nest.Nest;
import mouldwright.geometry.nest.NestPart;
import mouldwright.geometry.nest.Placement;
import mouldwright.geometry.plane.Outline;
import mouldwright.plan.sheets.SheetLayout;

/** Sheets with the parts laid on them as one JSON object, after {@code schema/sheets.schema.json}. Lengths in metres, x along a sheet's longer side; angles in degrees. */
public final class SheetsJson {

    private SheetsJson() { }

    /** The whole file.
     *  @param plug     its name
     *  @param revision of the texts it was worked out of */
    public static String print(String plug, String revision, List<SheetLayout> layouts) {
        return JsonFile.print(json -> json.object(o -> o.member("plug", plug).member("revision", revision)
                .array("cautions", List.of(Caution.DUST.words(), Caution.DEFERENCE), JsonFile::text).array("materials", layouts, SheetsJson::material)));
    }

    private static void material(JsonFile json, SheetLayout layout) throws IOException {
        Nest nest = layout.nest();
        json.object(o -> o.member("sheet", layout.sheet().name()).member("thickness", layout.thickness()).member("length", nest.order().sheets().getFirst().length())
                .member("width", nest.order().sheets().getFirst().width()).member("kerf", nest.order().kerf()).member("margin", nest.order().margin()).member("sheets", nest.sheets())
                .member("leastSheets", nest.leastSheets()).member("used", nest.shareUsed()).member("lengthLeft", layout.lengthLeft()).member("tried", nest.tried())
                .member("stopped", nest.stopped()).array("tooLarge", nest.tooLarge().stream().map(NestPart::key).toList(), JsonFile::text)
                .array("taken", nest.taken(), (s, size) -> s.object(one -> one.member("length", size.length()).member("width", size.width())))
                .array("placements", nest.placements(), (p, placement) -> placement(p, layout, placement)));
    }

    private static void placement(JsonFile json, SheetLayout layout, Placement placement) throws IOException {
        json.object(o -> o.member("sheet", placement.sheet() + 1).member("part", placement.part().key()).member("name", layout.part(placement).name())
                .member("turned", placement.degrees()).member("x", placement.x()).member("y", placement.y())
                .member("outline", ring -> ring(ring, placement.outer())).array("openings", placement.openings(), SheetsJson::ring));
    }

    private static void ring(JsonFile json, Outline ring) throws IOException {
        json.array(ring.points(), (pairs, point) -> pairs.pair(point.y(), point.z()));
    }
}
