/** A spec in SI, immutable, with the origin of every figure in its text, in a library or in a documented default. */
package mouldwright.plan.spec;
