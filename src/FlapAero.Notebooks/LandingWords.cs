using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Parts of sentences about a landing that lessons need again and again.</summary>
public static class LandingWords
{
    /// <summary>Where the wind blows from.</summary>
    /// <param name="ahead">The headwind in knots; negative from behind.</param>
    /// <returns>Such as "10 kt on the nose".</returns>
    public static Words Blows(double ahead) =>
        ahead == 0 ? (Words)"No wind" : $"{Speed.FromKnots(Math.Abs(ahead)):0} {(ahead > 0 ? "on the nose" : "from behind")}";

    /// <summary>Where a landing stops against the runway's end.</summary>
    /// <param name="left">The runway that is left.</param>
    /// <returns>Such as "200 ft before its end".</returns>
    public static Words Spare(Length left) =>
        $"{Length.FromFeet(Math.Abs(left.Feet))} {(left < Length.Zero ? "past" : "before")} its end";

    /// <summary>Whether a runway is long enough.</summary>
    /// <param name="left">What is left of it.</param>
    /// <returns>Such as "200 ft to spare".</returns>
    public static Words Stands(Length left) => left < Length.Zero ? (Words)$"{-left} short" : $"{left} to spare";

    /// <summary>Whether a runway has room for a landing.</summary>
    /// <param name="left">What is left of it.</param>
    /// <returns>Such as "has 200 ft to spare".</returns>
    public static Words Room(Length left) =>
        left < Length.Zero ? (Words)$"is {-left} too short" : $"has {left} to spare";

    /// <summary>The bank that the turn to final takes from a place.</summary>
    /// <param name="turn">What is flown from that place.</param>
    /// <returns>Such as "takes 30°".</returns>
    public static Words TakesBank(FlownCircuit turn) =>
        turn?.BankForCentreline is { } bank ? (Words)$"takes {bank:0}" : (Words)"cannot make the centreline with any bank that this wing has";
}
