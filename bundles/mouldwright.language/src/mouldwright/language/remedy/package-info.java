/**
 * What mends a finding, as edits of its text: {@link mouldwright.language.remedy.Fixes} is what fronts ask.
 */
package mouldwright.language.remedy;
