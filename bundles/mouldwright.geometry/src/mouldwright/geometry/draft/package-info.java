/** Whether a mould comes off: draft, undercuts and lines along the body. */
package mouldwright.geometry.draft;
