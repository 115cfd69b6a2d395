package mouldwright.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import mouldwright.units.Dimension;

/** A line of the order list.
 *  @param name      of the material
 *  @param title     in words, where its library states one
 *  @param stocked   whether a library describes it, so that it could have a pack and a price
 *  @param dimension of the amounts
 *  @param amount    likely need over the whole job, SI
 *  @param low       need, SI
 *  @param high      need, SI
 *  @param stages    that need it
 *  @param packing   whole packs and their price; empty where no pack is stated */
public record OrderEntry(String name, Optional<String> title, boolean stocked, Dimension dimension, double amount, double low, double high,
        List<String> stages, Optional<Packing> packing) {

    /** Whole packs.
     *  @param size  of a pack, SI of the line's dimension
     *  @param packs that hold the likely need
     *  @param low   packs that hold the low need
     *  @param high  packs that hold the high need
     *  @param left  over of the likely packs, SI
     *  @param price of a pack
     *  @param cost  of the likely packs; empty where the price is in another currency
     *  @param currency such as EUR */
    public record Packing(double size, int packs, int low, int high, double left, double price, OptionalDouble cost, String currency) { }

    /** Copies its list. */
    public OrderEntry {
        stages = List.copyOf(stages);
    }
}
