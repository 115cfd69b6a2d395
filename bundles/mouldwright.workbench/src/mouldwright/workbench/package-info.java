/** The product: its application, its window and its perspective. */
package mouldwright.workbench;
