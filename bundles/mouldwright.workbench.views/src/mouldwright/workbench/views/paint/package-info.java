/** Drawings on a screen or a printer: painted, zoomed and moved. */
package mouldwright.workbench.views.paint;
