/** Outlines and regions of a section plane. */
package mouldwright.geometry.plane;
