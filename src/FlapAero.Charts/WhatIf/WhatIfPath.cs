namespace FlapAero.Charts;

/// <summary>
/// The wheels' path of a landing for a drawing, from its ends alone: heights by the landing's own law, distances between two ends by a cubic.
/// A landing's own moments take as long as several landings; a test holds the one against the other.
/// </summary>
internal static class WhatIfPath
{
    private const int Moments = 16;

    /// <summary>Along and up in metres, from the threshold to the touchdown.</summary>
    public static IEnumerable<(double Along, double Up)> Of(LandingSetup landing, LandingResult result)
    {
        yield return (0, landing.Technique.ThresholdHeight.Meters);
        LandingStageResult holdOff = result.Stage(LandingStage.HoldOff);
        double lasts = holdOff.Lasts.Seconds, tau = landing.Technique.FlareTimeConstant.Seconds;
        double wind = landing.Headwind.MetersPerSecond, floor = landing.Technique.HoldOffHeight.Meters;
        double begin = result.FlareStartDistance.Meters, way = result.HoldOffEndDistance.Meters - begin;
        double above = result.FlareHeight.Meters - floor;
        double first = (result.FlareStartAirspeed.MetersPerSecond - wind) * lasts;
        double last = (result.HoldOffEndAirspeed.MetersPerSecond - wind) * lasts;
        for (int i = 0; i <= Moments; i++)
        {
            // More of them where the path bends.
            double s = Math.Pow((double)i / Moments, 1.5), square = s * s, cube = square * s;
            double along = (-2 * cube + 3 * square) * way + (cube - 2 * square + s) * first + (cube - square) * last;
            yield return (begin + along, floor + above * Math.Exp(-s * lasts / tau));
        }
        yield return (result.TouchdownDistance.Meters, 0);
    }
}
