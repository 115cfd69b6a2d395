/** What is found in a build plan: one class a check, all of them named in {@link mouldwright.check.Catalogue}. What can be found in the text alone is the
 *  language's own matter. Codes: MW1xx shape, 2xx frame, 3xx fill, 4xx carve and survey, 5xx skin and laminate, 6xx cure, 7xx finish and mould, 8xx plan,
 *  9xx library and language. */
package mouldwright.check;
