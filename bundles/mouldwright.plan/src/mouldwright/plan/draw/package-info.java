/** How sure a plan's figures are: the ledger reckoned for many draws of its uncertain figures. */
package mouldwright.plan.draw;
