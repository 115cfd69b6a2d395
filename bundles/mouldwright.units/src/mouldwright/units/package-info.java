/**
 * Dimensions, units, and the step from a written number with its unit to SI.
 *
 * <p>All inside code works in SI: metre, kilogram, second, radian, plain fractions, and degrees Celsius for
 * temperatures. Units exist only at the edges, and this package is the edge. It depends on nothing at run time; its
 * table of simple units is generated when the bundle is built and tested against the JSR 385 libraries.
 */
package mouldwright.units;
