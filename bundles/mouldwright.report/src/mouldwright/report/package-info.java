/**
 * What leaves the engine on paper and in files: estimates as text, JSON and CSV, derivations as a tree, findings as a good compiler
 * prints them. The same plan always gives the same bytes, in every locale.
 */
package mouldwright.report;
