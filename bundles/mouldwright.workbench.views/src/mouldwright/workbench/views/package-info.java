/** The views round the text: each paints a drawing or a table of the build plan, and follows the cursor. */
package mouldwright.workbench.views;
