/** Bodies lofted through sections, and their sections at any x. */
package mouldwright.geometry.loft;
