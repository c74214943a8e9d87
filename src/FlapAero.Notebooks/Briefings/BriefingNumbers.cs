using System.Globalization;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>Numbers as a briefing sheet prints them: whole or in tens, and rounded against the pilot.</summary>
internal static class BriefingNumbers
{
    // A value that is whole but for the last bits of a double is that whole.
    private const double Rounding = 1e-6;

    /// <summary>A speed to fly, rounded up to whole knots.</summary>
    public static Speed Whole(Speed speed) => Speed.FromKnots(Up(speed.Knots));

    /// <summary>A highest speed, rounded down to whole knots.</summary>
    public static Speed WholeAtMost(Speed speed) => Speed.FromKnots(Down(speed.Knots));

    /// <summary>A distance that is used up, rounded up to tens of metres.</summary>
    public static Length TensOfMetres(Length distance) => BriefedLanding.RoundedUp(distance);

    /// <summary>The same to tens of feet.</summary>
    public static Length TensOfFeet(Length distance) => Length.FromFeet(10 * Up(distance.Feet / 10));

    /// <summary>A distance that is there, rounded down to tens of metres.</summary>
    public static Length TensOfMetresAvailable(Length distance) => BriefedLanding.RoundedDown(distance);

    /// <summary>The same to tens of feet.</summary>
    public static Length TensOfFeetAvailable(Length distance) => Length.FromFeet(10 * Down(distance.Feet / 10));

    /// <summary>A height or altitude to the nearest ten feet, as an altimeter is read.</summary>
    public static Length Tens(Length height) => Length.FromFeet(Tens(height.Feet));

    /// <summary>An engine speed to the nearest ten revolutions a minute.</summary>
    public static RotationalSpeed Tens(RotationalSpeed speed) => RotationalSpeed.FromRevolutionsPerMinute(Tens(speed.RevolutionsPerMinute));

    /// <summary>A number that is whole by now, under a heading that has its unit.</summary>
    public static string Bare(double whole) => QuantityText.Of(whole, "0");

    /// <summary>A speed to fly in words.</summary>
    public static string Knots(Speed speed) => QuantityText.Of(Whole(speed), "kt 0");

    /// <summary>A highest speed in words.</summary>
    public static string KnotsAtMost(Speed speed) => QuantityText.Of(WholeAtMost(speed), "kt 0");

    /// <summary>A distance that is used up, with feet beside.</summary>
    public static string Distance(Length distance) => Both(TensOfMetres(distance), TensOfFeet(distance));

    /// <summary>The same in metres alone.</summary>
    public static string Metres(Length distance) => QuantityText.Of(TensOfMetres(distance), "m 0");

    /// <summary>A distance that is there, with feet beside.</summary>
    public static string Available(Length distance) => Both(TensOfMetresAvailable(distance), TensOfFeetAvailable(distance));

    /// <summary>The same in metres alone.</summary>
    public static string MetresAvailable(Length distance) => QuantityText.Of(TensOfMetresAvailable(distance), "m 0");

    /// <summary>The same in feet alone.</summary>
    public static string FeetAvailable(Length distance) => QuantityText.Of(TensOfFeetAvailable(distance), "ft 0");

    /// <summary>A height or altitude in words.</summary>
    public static string Height(Length height) => QuantityText.Of(Tens(height), "ft 0");

    /// <summary>An engine speed in words.</summary>
    public static string Engine(RotationalSpeed speed) => QuantityText.Of(Tens(speed), "rpm 0");

    /// <summary>Along downwind, from abeam the touchdown point.</summary>
    public static string PastAbeam(Length past)
    {
        string miles = QuantityText.Of(Length.FromNauticalMiles(Math.Abs(past.NauticalMiles)), "nmi 0.0");
        return Math.Abs(past.NauticalMiles) < 0.05 ? "abeam" : miles + (past.Meters > 0 ? " past abeam" : " before");
    }

    /// <summary>Height of the wheels over the threshold.</summary>
    public static string Over(Briefing briefing) => QuantityText.Of(briefing.Flapless.Landing.ThresholdHeight, "ft 0");

    /// <summary>A direction in three digits.</summary>
    public static string Direction(Angle angle)
    {
        double degrees = Math.Round(angle.Degrees) % 360;
        return (degrees == 0 ? 360 : degrees).ToString("000", CultureInfo.InvariantCulture) + "°";
    }

    /// <summary>A slope in words.</summary>
    public static string Slope(double slope) =>
        Math.Abs(slope) < 0.0005 ? "level" : QuantityText.Of(Math.Abs(slope), "% 0.0") + (slope > 0 ? " uphill" : " downhill");

    private static double Up(double value) => Math.Ceiling(value - Rounding);

    private static double Down(double value) => Math.Floor(value + Rounding);

    private static double Tens(double value) => 10 * Math.Round(value / 10);

    private static string Both(Length metres, Length feet) => $"{QuantityText.Of(metres, "m 0")} ({QuantityText.Of(feet, "ft 0")})";
}
