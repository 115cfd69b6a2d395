package mouldwright.report;

import java.util.List;

/** Shares the lists of a card out to several. */
final class CardShare {

    private CardShare() { }

    /** How many rows of a piece can be shared out. */
    static int rows(Card.Piece piece) {
        return switch (piece) {
            case Card.Rows(Table table, List<String> strong) -> table.rows().size();
            case Card.Bars(List<Card.Bar> bars, double days) -> bars.size();
            case Card.Keys keys -> 0;
            case Card.Ticks ticks -> 0;
            case Card.Boxes boxes -> 0;
            case Card.Blanks blanks -> 0;
            case Card.Picture picture -> 0;
        };
    }

    /** A share of a piece; what is no list stands on every card.
     *  @param number from 0 */
    static Card.Piece of(Card.Piece piece, int number, int of) {
        return switch (piece) {
            case Card.Rows(Table table, List<String> strong) -> new Card.Rows(table.only(from(number, of, table.rows().size()), from(number + 1, of, table.rows().size())), strong);
            case Card.Bars(List<Card.Bar> bars, double days) -> days(bars.subList(from(number, of, bars.size()), from(number + 1, of, bars.size())));
            case Card.Keys keys -> keys;
            case Card.Ticks ticks -> ticks;
            case Card.Boxes boxes -> boxes;
            case Card.Blanks blanks -> blanks;
            case Card.Picture picture -> picture;
        };
    }

    /** Bars on the days of their own card, so that short work on a long job is seen. */
    private static Card.Bars days(List<Card.Bar> bars) {
        double first = Math.floor(bars.stream().mapToDouble(Card.Bar::from).min().orElse(0));
        double last = Math.ceil(bars.stream().mapToDouble(bar -> Math.max(bar.to(), bar.ready())).max().orElse(1));
        return new Card.Bars(bars.stream().map(bar -> new Card.Bar(bar.words(), bar.when(), bar.from() - first, bar.to() - first, bar.ready() - first, bar.critical())).toList(),
                Math.max(1, last - first));
    }

    private static int from(int number, int of, int rows) {
        return rows * number / of;
    }
}
