package mouldwright.report;

import java.util.List;
import java.util.stream.Collectors;
import mouldwright.plan.Member;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** Timber to cut for the frame, and where its members are marked for the plates. */
final class MemberTable implements TextReport.StageTable {

    @Override
    public String stage() {
        return "frame";
    }

    @Override
    public void print(Estimate estimate, Display display, StringBuilder out) {
        List<Member> members = estimate.members();
        if (members.isEmpty()) {
            return;
        }
        Figure section = new Figure(display, members.stream().mapToDouble(member -> Math.max(member.width(), member.depth())).max().orElse(0), Dimension.LENGTH);
        Figure length = new Figure(display, members.stream().mapToDouble(Member::length).max().orElse(0), Dimension.LENGTH);
        Table table = new Table().words("timber").figures("of").figures("width", section.unit()).figures("depth", section.unit()).figures("length", length.unit());
        for (Member member : members) {
            table.row(List.of(member.name(), String.valueOf(member.quantity()), section.of(member.width()), section.of(member.depth()), length.of(member.length())));
        }
        table.print("  ", out);
        for (Member member : members) {
            if (member.marks().size() < 2) {
                continue;
            }
            Paragraph.print("  ", "    ", member.name() + ", " + length.unit() + " from its forward end: "
                    + member.marks().stream().map(mark -> mark.name() + " " + length.of(mark.at())).collect(Collectors.joining(", ")), out);
        }
    }
}
