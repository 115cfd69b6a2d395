/** Splines, quadrature and arc length: the mathematics under sections and lofts. */
package mouldwright.geometry.curve;
