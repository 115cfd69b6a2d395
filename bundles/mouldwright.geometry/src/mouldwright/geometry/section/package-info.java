/** Outlines of a body at its stations: how they are given, what can be wrong with them, and the smooth stretches they are
 *  made of. */
package mouldwright.geometry.section;
