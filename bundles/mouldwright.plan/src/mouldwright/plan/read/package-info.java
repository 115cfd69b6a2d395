/** From the EMF model of a spec to {@link mouldwright.plan.spec.Spec}. The only package of the engine that knows EMF.
 *  {@link mouldwright.plan.read.Amounts} works out every amount, with what each property measures taken from the model's annotations
 *  ({@link mouldwright.plan.read.Expected}), so that the language's validator and the reading of a spec cannot disagree;
 *  what makes no sense becomes a {@link mouldwright.plan.read.Slip}. */
package mouldwright.plan.read;
