package mouldwright.plan;

/** A piece of mat and where it is cut from. Likely sizes, developed over the surface, laps included.
 *  @param piece   counted from 1 over the whole job, in the order of laying
 *  @param laminate what it belongs to: {@code skin}, {@code mould} or {@code mould.stiffener}
 *  @param ply     the ply it belongs to, counted from 1 in the order of laying, in each laminate by itself
 *  @param mat     what it is cut from
 *  @param where   where it is laid, in words
 *  @param width   round the girth, across the roll, m
 *  @param length  along the body, along the roll, m
 *  @param roll    of this mat, counted from 1 in each laminate by itself
 *  @param cut     straight across that roll, counted from 1 over all rolls of this mat
 *  @param along   from the start of the roll to the piece, m
 *  @param across  from the side of the roll to the piece, m */
public record PieceEntry(int piece, String laminate, int ply, String mat, String where, double width, double length, int roll, int cut, double along,
        double across) {

    /** The same piece with its number. */
    public PieceEntry numbered(int number) {
        return new PieceEntry(number, laminate, ply, mat, where, width, length, roll, cut, along, across);
    }
}
