/** The workbench tried in its own window, as a user has it. */
package mouldwright.workbench.tests;
