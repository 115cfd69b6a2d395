/** The build plan: what the stages worked out of a spec, with the derivation of every figure. */
package mouldwright.plan;
