namespace FlapAero.Manuals;

/// <summary>What a printed number says of its own rounding: its last decimal; a whole number, the unit's usual step.</summary>
internal static class Rounding
{
    /// <summary>The step, in the number's own unit.</summary>
    public static double Step<T>(this Printed<T> printed) =>
        printed.Decimals > 0 ? Math.Pow(10, -Math.Min(printed.Decimals, 12)) : ManualUnits.WholeStep(printed.Unit);

    /// <summary>Standard deviation of an even error of half a step either way, in the number's own unit.</summary>
    public static double Error<T>(this Printed<T> printed) => printed.Step() / Math.Sqrt(12);

    /// <summary>The step of an airspeed in knots.</summary>
    public static double StepKnots(this Printed<PrintedAirspeed> printed) =>
        printed.Step() * printed.Value.Value.Knots / Math.Max(printed.Number, 1e-9);
}
