package mouldwright.units;

/** The family of units figures are shown in. */
public enum UnitSystem {
    /** Millimetres, kilograms, litres, degC. */
    METRIC,
    /** US trade units: inches, pounds, US gallons, degF. */
    US
}
