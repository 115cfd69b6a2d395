/** The stages of a build, one class each: what is measured on the shape, once, and the amounts that follow. */
package mouldwright.plan.stage;
