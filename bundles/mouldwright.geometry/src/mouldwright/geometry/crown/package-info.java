/** How far the surface between plates stands off the boards it is faired with. */
package mouldwright.geometry.crown;
