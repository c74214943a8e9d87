using System.Globalization;

namespace FlapAero.Charts;

/// <summary>One number of a what-if setting: its name in addresses, its words, its range and where it begins. Immutable.</summary>
/// <param name="Key">Its name in a setting's JSON and in an address.</param>
/// <param name="Label">Its name on the page.</param>
/// <param name="Unit">Its unit in the setting, whatever the page shows.</param>
/// <param name="Least">The least that is taken.</param>
/// <param name="Most">The most.</param>
/// <param name="Step">Of a slider.</param>
/// <param name="Usual">Where it begins.</param>
/// <param name="Help">What it means, in a sentence.</param>
internal sealed record WhatIfField(
    string Key, string Label, string Unit, double Least, double Most, double Step, double Usual, string Help)
{
    /// <summary>All of them, in the order of the page.</summary>
    public static IReadOnlyList<WhatIfField> All { get; } =
    [
        new("mass", "Mass", "kg", 300, 2500, 5, 1100, "The mass at the landing; the aeroplane's file sets the limits."),
        new("altitude", "Pressure altitude", "ft", -1000, 10_000, 100, 0, "The altimeter shows it at 1013 hPa."),
        new("temperature", "Temperature", "°C", -30, 45, 1, 15, "The outside air temperature."),
        new("along", "Wind along the runway", "kt", -15, 40, 1, 0, "A headwind is positive, a tailwind negative."),
        new("across", "Wind across the runway", "kt", -30, 30, 1, 0, "From the right is positive, from the left negative."),
        new("gust", "Gusts above the mean wind", "kt", 0, 30, 1, 0, "A share of it is added to the approach speed, see the rules."),
        new("speed", "Approach speed over the reference", "kt", -15, 30, 1, 0, "Added to the reference speed and the share of the gust."),
        new("path", "Path down", "°", 2, 8, 0.1, 3.5, "The angle of the path over the ground."),
        new("height", "Height over the threshold", "ft", 20, 120, 1, 50, "Of the wheels; with the path it sets the aiming point."),
        new("round", "Round-out: time constant", "s", 0.5, 4, 0.1, 1.5, "Longer is a higher and gentler round-out."),
        new("cut", "Throttle begins to close at", "ft", 0, 120, 1, 15, "The height of the wheels where the power goes."),
        new("slope", "Slope of the runway", "%", -5, 5, 0.1, 0, "Uphill is positive. It acts on the roll only."),
        new("braking", "Braking", "%", 0, 100, 5, 75, "The share of what the surface gives to the firmest braking."),
        new("length", "Length of the runway", "m", 200, 3000, 10, 1200, "From its beginning to its end."),
        new("displaced", "Threshold past the beginning", "m", 0, 1000, 10, 0, "Nobody may touch down before the threshold."),
        new("multipleUp", "Reference over stall, flaps up", "", 1.2, 2, 0.01, BriefingRules.Usual.FlapsUpMultiple, "The reference speed is so many times the stalling speed."),
        new("multiplePart", "Reference over stall, flaps between", "", 1.2, 2, 0.01, BriefingRules.Usual.PartFlapsMultiple, "The same for a setting between up and full."),
        new("multipleFull", "Reference over stall, full flaps", "", 1.2, 2, 0.01, BriefingRules.Usual.FullFlapsMultiple, "The same with full flaps."),
        new("gustShare", "Share of the gust that is added", "%", 0, 100, 5, 100 * BriefingRules.Usual.GustShare, "Of what the gusts are above the mean wind."),
        new("gustMost", "Most that is added for gusts", "kt", 0, 30, 1, 30, "More is not added, however it gusts."),
        new("margin", "Margin on the landing distance", "", 1, 3, 0.01, Math.Round(BriefingRules.Usual.Margin.Factor, 2), "The distance from the threshold to the stop times this is held against the runway."),
    ];

    /// <summary>A field by its key.</summary>
    public static WhatIfField Of(string key) => All.First(field => field.Key == key);

    /// <summary>A value with its unit as a message says it.</summary>
    public string Say(double value) => string.Create(
        CultureInfo.InvariantCulture, $"{QuantityText.Of(value, "0.##")}{(Unit == "°" ? "" : "\u00A0")}{Unit}");

    /// <summary>Whether a value may stand here.</summary>
    public bool Takes(double value) => value >= Least && value <= Most;
}
