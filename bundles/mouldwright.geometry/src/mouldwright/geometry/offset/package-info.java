/** From the finished surface to the foam: the build-up of skin and surfacer, and outlines moved in or out by it. */
package mouldwright.geometry.offset;
