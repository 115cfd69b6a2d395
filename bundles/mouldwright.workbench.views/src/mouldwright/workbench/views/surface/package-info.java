/** The plug as a shaded solid that turns: made of a plan, seen by a camera and filled in pixel by pixel, without any window. */
package mouldwright.workbench.views.surface;
