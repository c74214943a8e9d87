namespace FlapAero.Published.Tests;

/// <summary>How the library answers a row, and what the source's own formula gives where the library takes another.</summary>
internal sealed record Evaluation(Func<double[]> Library, Func<double[]>? SourceFormula = null);

/// <summary>A row that says a formula instead of a number: the library's values beside that formula's.</summary>
internal sealed record Law(Func<(double Library, double Formula)[]> Pairs);

/// <summary>
/// Every row's evaluation, by id. Inputs come from the row's conditions; the expected value is in the data only.
/// </summary>
internal static partial class Evaluations
{
    public static IReadOnlyDictionary<string, Evaluation> ById { get; } = Merge(
        Atmosphere, Airspeeds, Stalls, GroundEffects, Textbook, FiniteWings, Flaps, Propellers, WholeLandings,
        TextbookLandings, SurfaceRules);

    /// <summary>Rows that give a formula which the library follows.</summary>
    public static IReadOnlyDictionary<string, Law> Laws { get; } = new Dictionary<string, Law>
    {
        ["T02-003"] = new(() => [.. StallRatios()]),
        ["T05-012"] = new(() => [.. ThinAerofoilFlaps()]),
    };

    /// <summary>Rows that are no result: what they are for.</summary>
    public static IReadOnlyDictionary<string, string> Context { get; } = new Dictionary<string, string>(LandingContext())
    {
        ["T01-039"] = "Inputs of T01-040.",
        ["T01-041"] = "Inputs of T01-042; its values are read from the row.",
        ["T02-018"] = "The regulation's definition of an engine at idle in a stall test: the model's stalling speed has no thrust.",
        ["T04-004"] = "A formula that the model does not take; T04-005 evaluates it and says by how much it differs.",
        ["T04-016"] = "A formula that the model does not take; T04-017 and T04-018 evaluate it and say by how much it differs.",
        ["T04-019"] = "A finding in words: theory and flight agree. There is no number in it.",
        ["T05-008"] = "Inputs of T05-009.",
        ["T06-001"] = "Flap up, of the pair that FlapReportTests compares the estimate with.",
        ["T06-002"] = "Flap down, of the pair that FlapReportTests compares the estimate with.",
        ["T06-003"] = "Inputs of T06-022.",
        ["T06-004"] = "A whole landing of an aeroplane whose weight and wheels are not known to us: HandbookRuleTests compares how much longer it is.",
        ["T06-005"] = "A take-off: not in the model.",
        ["T06-006"] = "FlapReportTests compares the estimate with it.",
        ["T06-007"] = "Slots: not in the model.",
        ["T06-008"] = "Slots and flaps together: not in the model.",
        ["T06-009"] = "Slots and flaps together: not in the model.",
        ["T06-013"] = "A maximum without the one that it grew from: there is no increment in it.",
        ["T06-014"] = "FlapReportTests compares the estimate with it.",
        ["T06-015"] = "Drag of a flap: not estimated from geometry.",
        ["T06-017"] = "A rule in words: FlapReportTests holds the critical-section method to it.",
        ["T06-018"] = "A finding in words: FlapReportTests holds the estimate to it.",
        ["T11-005"] = "The model rolls on the slope itself; a sheet does not add the rule's share.",
        ["T08-001"] = "Input of T08-008 to T08-014.",
        ["T08-002"] = "Input of T08-008 to T08-014.",
        ["T08-003"] = "The weight of the same aeroplane; no result of these rows depends on it.",
        ["T08-004"] = "Input of T08-009 to T08-014.",
        ["T08-005"] = "Input of T08-008 to T08-014.",
        ["T08-006"] = "The engine of the same aeroplane; no result of these rows depends on it.",
        ["T08-007"] = "The propeller of the same aeroplane; no result of these rows depends on it.",
    };

    private static Dictionary<string, Evaluation> Merge(params Func<Dictionary<string, Evaluation>>[] topics) =>
        topics.SelectMany(topic => topic()).ToDictionary(pair => pair.Key, pair => pair.Value, StringComparer.Ordinal);

    private static Evaluation Of(Func<double> library, Func<double>? formula = null) =>
        new(() => [library()], formula is null ? null : () => [formula()]);

    private static Evaluation Of(Func<double[]> library, Func<double[]>? formula = null) => new(library, formula);
}
