package mouldwright.plan.stage;

/** What the finish is put on.
 *  @param area moulded surface of the plug, end faces counted, m2 */
public record FinishMeasures(double area) { }
