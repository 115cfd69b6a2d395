package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.frame.Jointing;
import mouldwright.geometry.frame.NoteSpace;
import mouldwright.geometry.frame.PartPieces;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.plane.Region;

/** Joins the layers of a lengthwise member that is longer than a sheet: joints of neighbouring layers are staggered, so that each lies against wood that runs
 *  through, which is also what holds butts together. */
final class LayerJoining {

    private final PlatePart layer;
    private final Jointing.Join join;
    private final double width;
    private final double length;

    /** @param layer  two or more alike @param width @param length of the sheet, edges taken off, m */
    LayerJoining(PlatePart layer, Jointing.Join join, double width, double length) {
        this.layer = layer;
        this.join = join;
        this.width = width;
        this.length = length;
    }

    /** The pieces of odd layers and of even ones; empty where no joints make them fit. */
    Optional<List<PlatePart>> pieces() {
        return Jointing.joints(layer, width, length, join).flatMap(odd -> Jointing.joints(layer, width, length, join, odd, join.apart()).map(even -> {
            String apart = "joints of neighbouring layers " + Math.round(nearest(odd, even) * 1000) + " mm apart";
            List<PlatePart> pieces = new ArrayList<>(PartPieces.ofLayer(share("odd", (layer.quantity() + 1) / 2, apart), odd, join));
            pieces.addAll(PartPieces.ofLayer(share("even", layer.quantity() / 2, apart), even, join));
            return pieces;
        }));
    }

    private static double nearest(List<Jointing.Joint> odd, List<Jointing.Joint> even) {
        return odd.stream().flatMapToDouble(one -> even.stream().mapToDouble(other -> Math.abs(one.at() - other.at()))).min().orElse(0);
    }

    private PlatePart share(String which, int quantity, String apart) {
        String name = layer.name() + ", " + which + " layers";
        List<String> words = new ArrayList<>(List.of(name));
        layer.notes().stream().skip(1).map(PlatePart.Note::words).forEach(words::add);
        words.add(apart);
        return new PlatePart(layer.key() + "." + which, layer.kind(), name, layer.outer(), layer.openings(), layer.bores(), layer.scores(), layer.marks(), layer.bevels(),
                NoteSpace.write(Region.of(layer.outer()), words), layer.sheet(), layer.thickness(), quantity);
    }
}
