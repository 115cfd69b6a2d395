/** Plates: their outlines, bevels and the side of the station line they stand on. */
package mouldwright.geometry.frame;
