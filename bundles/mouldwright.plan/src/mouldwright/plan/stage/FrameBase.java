package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.plan.CutParts;
import mouldwright.plan.Member;
import mouldwright.plan.ledger.Ground;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Measurement;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Fittings;
import mouldwright.plan.spec.Frame;

/** Figures and orders of what the plates are set up on. It is no part of the plug, so its mass is none of the frame's. */
final class FrameBase {

    private FrameBase() { }

    static void quantify(Frame frame, CutParts parts, List<Ground> outline, Ledger ledger) {
        frame.fittings().base().ifPresent(base -> board(base, parts, outline, ledger));
        timber(frame, parts, outline, ledger);
    }

    private static void board(Fittings.Base base, CutParts parts, List<Ground> outline, Ledger ledger) {
        List<PlatePart> boards = parts.parts().stream().filter(part -> part.key().equals("base") || part.key().startsWith("base.")).toList();
        if (boards.isEmpty())
            return;
        List<Ground> grounds = new ArrayList<>(outline);
        grounds.add(new Ground.Figure(base.margin()));
        Node area = ledger.measured("base, with its straps, area", AREA,
                new Measurement(boards.stream().mapToDouble(PlatePart::area).sum(), 0, "plates and margin").on(grounds));
        ledger.quantity("frame.base.mass", "Base, mass", MASS).from("area x sheet thickness x sheet density",
                List.of(area, ledger.given(base.sheet().thickness()), ledger.given(base.sheet().density())), v -> v[0] * v[1] * v[2]).source("closed form");
        Node used = ledger.quantity("frame.base.sheets.used", "Sheets used for the base, parts of one counted", RATIO).from(
                "area / (sheet width x sheet length x share of a sheet used)", List.of(area, ledger.given(base.sheet().width()),
                        ledger.given(base.sheet().length()), ledger.given(Defaults.boardUse())), v -> v[0] / (v[1] * v[2] * v[3])).source("area bound");
        ledger.quantity("frame.base.sheets", "Sheets, for the base", RATIO).from("sheets used", List.of(used), v -> v[0]).roundedUp()
                .source("area bound; the low figure is the least that nesting could ever reach");
    }

    private static void timber(Frame frame, CutParts parts, List<Ground> outline, Ledger ledger) {
        List<Node> lengths = new ArrayList<>();
        for (Member member : parts.members())
            if (member.key().startsWith("strongback."))
                lengths.add(ledger.measured(member.name() + ", all alike", LENGTH, Places.exact(member.length() * member.quantity(), "cut lengths").on(grounds(frame, outline))));
        if (!lengths.isEmpty())
            ledger.quantity("frame.strongback.length", "Timber of the strongback", LENGTH).sum("rails + cross-members", lengths).source("cut lengths, no waste");
    }

    private static List<Ground> grounds(Frame frame, List<Ground> outline) {
        List<Ground> grounds = new ArrayList<>(outline);
        grounds.add(new Ground.Figure(frame.fittings().base().map(Fittings.Base::margin).orElseGet(Defaults::baseMargin)));
        return grounds;
    }

    static void orders(Frame frame, Ledger ledger, OrderBook orders) {
        frame.fittings().base().ifPresent(base -> ledger.find("frame.base.sheets.used").ifPresent(used -> orders.need(base.sheet(), used)));
        frame.fittings().strongback().ifPresent(ladder -> ledger.find("frame.strongback.length").ifPresent(length ->
                orders.need("Timber " + Math.round(ladder.width().likely() * 1000) + " by " + Math.round(ladder.depth().likely() * 1000) + " mm", length)));
    }
}
