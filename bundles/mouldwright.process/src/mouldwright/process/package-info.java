/**
 * What materials do in the shop: foam that rises, laminate that takes up resin, resin that gels, filler, coatings, and
 * the air they need. Pure functions and small records, in SI with temperatures in degC, each naming its source and
 * the range it holds for.
 *
 * <p>A figure handed in that cannot be (a negative thickness, a glass fraction of 2) is refused with an
 * {@link java.lang.IllegalArgumentException}: the reader of a spec finds such figures first and reports them in place. A
 * figure that can be but lies outside what is known, such as a temperature beyond a gel table, is no error here; the
 * result says so.
 */
package mouldwright.process;
