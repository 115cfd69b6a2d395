/** Drawings as immutable primitives in millimetres, and the writers that put them on paper and into files. */
package mouldwright.drawing;
