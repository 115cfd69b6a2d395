/** From the EMF model of a spec to {@link mouldwright.plan.spec.Spec}. The only package of the engine that knows EMF.
 *  What each property measures is annotated in the model ({@link mouldwright.plan.read.Expected}); what makes no sense becomes a
 *  {@link mouldwright.plan.read.ReadProblem} at its place, never an exception. */
package mouldwright.plan.read;
