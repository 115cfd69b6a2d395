package mouldwright.geometry.draft;

import java.util.Optional;
import mouldwright.geometry.measure.Measured;

/** How a part of a mould leaves the plug; areas in square metres.
 *
 *  @param undercut     draft below 0: the mould is caught
 *  @param lowAtParting draft from 0 to the limit in a strip that touches the parting line, that is, an edge of the part or the
 *                      line where the draft is 0, with draft growing away from it
 *  @param lowElsewhere draft from 0 to the limit anywhere else
 *  @param enough       draft of the limit and more
 *  @param stripWidth   greatest width of the touching strip round the girth, metres
 *  @param least        the least draft found outside the touching strip; empty if there is nothing outside */
public record DraftReport(Measured undercut, Measured lowAtParting, Measured lowElsewhere, Measured enough, double stripWidth,
                          Optional<DraftPlace> least) { }
