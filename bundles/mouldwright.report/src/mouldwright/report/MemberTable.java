package mouldwright.report;

import java.util.List;
import java.util.stream.Collectors;
import mouldwright.plan.Member;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** Timber to cut for the frame, and where its members are marked for the plates. */
final class MemberTable implements StageTable {

    @Override
    public String stage() {
        return "frame";
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        List<Member> members = estimate.members();
        if (members.isEmpty()) {
            return;
        }
        Figure section = new Figure(display, members.stream().mapToDouble(member -> Math.max(member.width(), member.depth())).max().orElse(0), Dimension.LENGTH);
        Figure length = new Figure(display, members.stream().mapToDouble(Member::length).max().orElse(0), Dimension.LENGTH);
        Table table = new Table("timber", "Timber").words("timber").figures("of").figures("width", section.unit()).figures("depth", section.unit()).figures("length", length.unit());
        for (Member member : members) {
            table.row(Cell.of(member.name()), Cell.of(member.quantity()), section.cell(member.width()), section.cell(member.depth()), length.cell(member.length()));
        }
        out.table(table);
        for (Member member : members) {
            if (member.marks().size() < 2) {
                continue;
            }
            out.note(member.name() + ", " + length.unit() + " from its forward end: "
                    + member.marks().stream().map(mark -> mark.name() + " " + length.of(mark.at())).collect(Collectors.joining(", ")));
        }
    }
}
