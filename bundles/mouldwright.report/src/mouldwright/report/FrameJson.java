package mouldwright.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.Alignment;
import mouldwright.plan.Member;

/** The parts of a frame and what they are set up by, as JSON. */
final class FrameJson {

    private FrameJson() { }

    static void part(JsonFile json, PlatePart part) throws IOException {
        json.object(o -> o.member("key", part.key()).member("kind", word(part.kind())).member("name", part.name()).member("sheet", part.sheet())
                .member("thickness", part.thickness()).member("quantity", part.quantity()).member("area", part.area())
                .array("outer", part.outer().points(), FrameJson::point)
                .array("openings", part.openings(), (one, opening) -> one.object(p -> p.member("use", word(opening.use()))
                        .array("ring", opening.ring().points(), FrameJson::point)))
                .array("bores", part.bores(), (one, bore) -> one.object(p -> p.member("y", bore.centre().y()).member("z", bore.centre().z())
                        .member("diameter", bore.diameter())))
                .array("scores", part.scores(), (one, score) -> one.object(p -> p.member("use", word(score.use())).member("label", score.label())
                        .member("closed", score.closed()).array("line", score.points(), FrameJson::point)))
                .array("marks", part.marks(), (one, mark) -> one.object(p -> p.member("line", mark.line()).member("y", mark.at().y()).member("z", mark.at().z())))
                .array("bevels", part.bevels(), (one, bevel) -> one.object(p -> p.member("y", bevel.at().y()).member("z", bevel.at().z())
                        .member("angle", bevel.angle()))));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static void point(JsonFile json, PlanePoint point) throws IOException {
        json.pair(point.y(), point.z());
    }

    static void member(JsonFile json, Member member) throws IOException {
        json.object(o -> o.member("key", member.key()).member("name", member.name()).member("width", member.width()).member("depth", member.depth())
                .member("length", member.length()).member("quantity", member.quantity())
                .array("marks", member.marks(), (one, mark) -> one.object(p -> p.member("station", mark.name()).member("at", mark.at()))));
    }

    static void alignment(JsonFile json, Alignment sheet) throws IOException {
        json.object(o -> o.member("x", sheet.x()).member("half", sheet.half()).member("tolerance", sheet.tolerance())
                .member("square", s -> s.object(p -> p.member("across", sheet.square().across()).member("along", sheet.square().along())
                        .member("diagonal", sheet.square().diagonal())))
                .array("holes", sheet.holes(), (one, hole) -> one.object(p -> p.member("y", hole.y()).member("z", hole.z()).member("diameter", hole.diameter())
                        .array("without", hole.without(), JsonFile::text)))
                .array("plates", sheet.rows(), FrameJson::row));
    }

    private static void row(JsonFile json, Alignment.Row row) throws IOException {
        json.object(o -> {
            o.member("station", row.station()).member("stands", row.stands()).member("offset", row.offset()).member("height", row.height())
                    .member("port", row.port()).member("starboard", row.starboard()).member("toPort", row.toPort()).member("toStarboard", row.toStarboard())
                    .member("top", row.top());
            for (Alignment.Reading reading : row.reading().map(List::of).orElse(List.of())) {
                o.member("leans", reading.leans()).member("high", reading.high()).member("within", reading.within());
            }
        });
    }
}
