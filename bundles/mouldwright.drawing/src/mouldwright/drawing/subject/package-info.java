/** What is drawn of a plan: one class a drawing. Lengths of the plan, in metres, become millimetres of paper here. */
package mouldwright.drawing.subject;
