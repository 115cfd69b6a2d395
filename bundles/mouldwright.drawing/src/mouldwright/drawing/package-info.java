/**
 * Drawings as immutable marks in millimetres, first to the right, then up, and the writers that put them on paper and into files. What is on
 * the screen is what is printed: every front paints the same drawing.
 */
package mouldwright.drawing;
