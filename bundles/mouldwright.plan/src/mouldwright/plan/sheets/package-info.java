/** The parts of a frame laid on sheets: asked for by itself, since a search is too slow to be part of every plan. */
package mouldwright.plan.sheets;
