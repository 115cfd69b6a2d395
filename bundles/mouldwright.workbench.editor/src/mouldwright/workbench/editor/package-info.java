/** The bridge from the platform's generic editor to the language services; installs into any workbench of the platform. */
package mouldwright.workbench.editor;
