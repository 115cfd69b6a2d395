package mouldwright.drawing.subject;

import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePlace;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.section.SectionKind;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Survey;
import mouldwright.plan.stage.FairMeasures;
import mouldwright.plan.stage.ShapeMeasures;

/** A place a survey found, as a number in a ring at the surface, with its size and what mends it in the legend. */
record SurveyMark(ShapeMeasures shape, View view) {

    private static final double STAND_OFF = 5;

    void draw(Draughtsman board, Legend legend, FairMeasures.Place place) {
        boolean port = place.hand() == Survey.Hand.PORT, mirrored = port && shape.plug().kind() == SectionKind.HALF;
        Slice slice = shape.plug().at(place.x());
        SurfacePlace at = slice.placeAtShare(place.share(), port && !mirrored);
        SurfacePoint point = slice.point(at.stretch(), at.u());
        double hand = mirrored ? -1 : 1, length = Math.max(1e-9, Math.hypot(point.ny(), point.nz()));
        Spot on = view.at(hand * point.y(), point.z()), off = on.plus(-STAND_OFF * hand * point.ny() / length, -STAND_OFF * point.nz() / length);
        String key = "survey." + place.number();
        board.about(key);
        board.draw(Role.ALARM, new Mark.Line(Path.line(on, on.toward(off, 0.56)), Pen.full(Tone.ALARM, 0.35)));
        board.draw(Role.ALARM, new Mark.Circle(off, 2.2, Pen.full(Tone.ALARM, 0.35)));
        board.draw(Role.ALARM, new Mark.Words(Integer.toString(place.number()), off.plus(0, -1.1), 2.2, Mark.Anchor.MIDDLE, 0, Tone.ALARM));
        board.about("");
        legend.number(place.number(), place.words() + ", " + (port ? "port" : "starboard") + size(place) + "; " + remedy(place.remedy()), key);
    }

    private static String size(FairMeasures.Place place) {
        FairMeasures.Size size = place.size();
        StringBuilder words = new StringBuilder();
        if (size.depth().likely() > 0)
            words.append(", ").append(Said.fine(size.depth().likely())).append(place.fault() == FairMeasures.Fault.GAUGE ? "" : " deep");
        if (size.along().isPresent() && size.across().isPresent())
            words.append(", ").append(Said.mm(size.along().map(Given::likely).orElse(0.0))).append(" by ").append(Said.mm(size.across().map(Given::likely).orElse(0.0)));
        return words.toString();
    }

    private static String remedy(FairMeasures.Remedy remedy) {
        return switch (remedy) {
            case FairMeasures.Plies(int count) -> count == 1 ? "1 further ply" : count + " further plies";
            case FairMeasures.Filler(int layers) -> layers == 1 ? "1 layer of filler" : layers + " layers of filler";
            case FairMeasures.NewFoam() -> "new foam bonded in and carved";
            case FairMeasures.LaidAnew() -> "cut out and laid anew";
            case FairMeasures.BoardedDown() -> "boarded down";
            case FairMeasures.Done() -> "mended";
        };
    }
}
