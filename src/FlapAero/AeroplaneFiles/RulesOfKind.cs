using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero.AeroplaneFiles;

/// <summary>
/// Whether wing, masses and lift make an aeroplane of the kind that is meant: a light one with one engine. Regulations kept its stalling
/// speed in the landing configuration to 61 kt at the maximum mass (CS 23.49 and 14 CFR 23.49 before 2017, from memory).
/// </summary>
internal static class RulesOfKind
{
    private static readonly Speed FastestStall = Speed.FromKnots(61);

    // Slower than any light aeroplane with a fixed wing: a guess that ends there is no guess.
    private static readonly Speed SlowestStall = Speed.FromKnots(25);

    /// <summary>The masses; without the maximum where it is refused, for every other rule would only say the same again.</summary>
    public static Masses? Check(IReadOnlyList<SettingValues> settings, WingValues? wing, Masses? masses, FaultList faults)
    {
        // With another fault in these values the speed would only say it again.
        if (!faults.IsEmpty || wing?.Wing is not { } plan || masses?.Maximum is not { } mass) return masses;
        if (settings.LastOrDefault()?.MaximumLiftCoefficient is not { } lift) return masses;
        Speed stall = StandIn.StallSpeed(plan, mass.Value, lift.Value);
        if (stall <= FastestStall) return masses;
        double loading = mass.Value.Kilograms / plan.Area.SquareMeters;
        faults.Add(
            mass.Line, mass.Place,
            Text($"{mass.Written} makes it stall at {stall.Knots:0.0} kt with {settings[^1].Label}, each square metre of wing carrying {loading:0} kg"),
            Text($"a light aeroplane with one engine stalls at {FastestStall.Knots:0} kt or less in its landing configuration (CS 23.49)")
            + Guess(plan, mass, lift.Value));
        return masses with { Maximum = null };
    }

    /// <summary>The unit that may have been meant: pounds typed as kilograms make the wing carry twice too much.</summary>
    private static string Guess(Wing wing, Given<Mass> mass, double maximumLiftCoefficient)
    {
        if (mass.Value.Unit != MassUnit.Kilogram) return "; are mass, area and C_Lmax right?";
        var pounds = Mass.FromPounds(mass.Value.Kilograms);
        Speed stall = StandIn.StallSpeed(wing, pounds, maximumLiftCoefficient);
        return stall <= FastestStall && stall >= SlowestStall
            ? Text($"; did you mean {pounds.Pounds:0.##} lb, {pounds.Kilograms:0} kg?") : "; are mass, area and C_Lmax right?";
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
