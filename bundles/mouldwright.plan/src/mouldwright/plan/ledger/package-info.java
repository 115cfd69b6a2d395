/** Figures that know where they came from: a small dataflow graph of stated figures, measures and formulas, reckoned at
 *  its likely values and at the corners of its ranges, and once more for any draw of the uncertain figures. */
package mouldwright.plan.ledger;
