using System.Globalization;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Numbers as a briefing sheet prints them: whole, and rounded against the pilot.</summary>
internal static class BriefingNumbers
{
    // A value that is whole but for the last bits of a double is that whole.
    private const double Rounding = 1e-6;

    /// <summary>A speed to fly, rounded up.</summary>
    public static string Knots(Speed speed) => QuantityText.Of(Whole(speed), "kt 0");

    /// <summary>A speed rounded up to whole knots.</summary>
    public static Speed Whole(Speed speed) => Speed.FromKnots(Math.Ceiling(speed.Knots - Rounding));

    /// <summary>A highest speed, rounded down.</summary>
    public static string KnotsAtMost(Speed speed) => QuantityText.Of(Speed.FromKnots(Math.Floor(speed.Knots + Rounding)), "kt 0");

    /// <summary>A distance that is used up, rounded up, with feet beside.</summary>
    public static string Distance(Length distance) => Both(Math.Ceiling(distance.Meters - Rounding), Math.Ceiling(distance.Feet - Rounding));

    /// <summary>The same in metres alone.</summary>
    public static string Metres(Length distance) => QuantityText.Of(Length.FromMeters(Math.Ceiling(distance.Meters - Rounding)), "m 0");

    /// <summary>The same in feet alone.</summary>
    public static string Feet(Length distance) => QuantityText.Of(Length.FromFeet(Math.Ceiling(distance.Feet - Rounding)), "ft 0");

    /// <summary>A distance that is there, rounded down, with feet beside.</summary>
    public static string Available(Length distance) => Both(Math.Floor(distance.Meters + Rounding), Math.Floor(distance.Feet + Rounding));

    /// <summary>The same in metres alone.</summary>
    public static string MetresAvailable(Length distance) => QuantityText.Of(Length.FromMeters(Math.Floor(distance.Meters + Rounding)), "m 0");

    /// <summary>The same in feet alone.</summary>
    public static string FeetAvailable(Length distance) => QuantityText.Of(Length.FromFeet(Math.Floor(distance.Feet + Rounding)), "ft 0");

    /// <summary>A height or altitude to the nearest ten feet, as an altimeter is read.</summary>
    public static string Height(Length height) => QuantityText.Of(Length.FromFeet(Tens(height.Feet)), "ft 0");

    /// <summary>An engine speed to the nearest ten revolutions a minute.</summary>
    public static string Engine(RotationalSpeed speed) => QuantityText.Of(RotationalSpeed.FromRevolutionsPerMinute(Tens(speed.RevolutionsPerMinute)), "rpm 0");

    /// <summary>Along downwind, from abeam the touchdown point.</summary>
    public static string PastAbeam(Length past)
    {
        string miles = QuantityText.Of(Length.FromNauticalMiles(Math.Abs(past.NauticalMiles)), "nmi 0.0");
        return Math.Abs(past.NauticalMiles) < 0.05 ? "abeam" : miles + (past.Meters > 0 ? " past abeam" : " before");
    }

    /// <summary>A direction in three digits.</summary>
    public static string Direction(Angle angle)
    {
        double degrees = Math.Round(angle.Degrees) % 360;
        return (degrees == 0 ? 360 : degrees).ToString("000", CultureInfo.InvariantCulture) + "°";
    }

    /// <summary>A slope in words.</summary>
    public static string Slope(double slope) =>
        Math.Abs(slope) < 0.0005 ? "level" : QuantityText.Of(Math.Abs(slope), "% 0.0") + (slope > 0 ? " uphill" : " downhill");

    private static double Tens(double value) => 10 * Math.Round(value / 10);

    private static string Both(double metres, double feet) =>
        $"{QuantityText.Of(Length.FromMeters(metres), "m 0")} ({QuantityText.Of(Length.FromFeet(feet), "ft 0")})";
}
