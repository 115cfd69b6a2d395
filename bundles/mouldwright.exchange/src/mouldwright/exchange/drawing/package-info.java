/** Reads outlines of sections from drawings in the drawing exchange format (DXF) written as text. */
package mouldwright.exchange.drawing;
