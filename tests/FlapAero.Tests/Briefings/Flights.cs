using UnitsNet;

namespace FlapAero.Tests.Briefings;

/// <summary>The demo flight with some things changed.</summary>
internal static class Flights
{
    public static BriefingRequest With(
        double? kilograms = null, double? metres = null, double? windFrom = null, double? wind = null, double? gust = null, bool calm = false,
        double? celsius = null, RunwaySurface? surface = null, double slope = 0, double? circuitFeet = null, Aeroplane? aeroplane = null, LandingMargin? margin = null,
        double? overFeet = null)
    {
        BriefingRequest demo = DemoBriefings.Flight;
        Runway runway = demo.Runway;
        Wind mean = new(
            windFrom is { } from ? Angle.FromDegrees(from) : demo.Wind.Mean.From,
            calm ? Speed.Zero : wind is { } knots ? Speed.FromKnots(knots) : demo.Wind.Mean.Speed);
        Speed? gusts = gust is { } strong ? Speed.FromKnots(strong) : calm || wind is not null ? null : demo.Wind.GustSpeed;
        return new(
            aeroplane ?? demo.Aeroplane,
            kilograms is { } mass ? Mass.FromKilograms(mass) : demo.Mass,
            runway with
            {
                LengthAvailable = metres is { } length ? Length.FromMeters(length) : runway.LengthAvailable,
                Surface = surface ?? runway.Surface,
                Slope = slope,
            },
            celsius is { } outside ? Air.AtTemperature(demo.Air.PressureAltitude, Temperature.FromDegreesCelsius(outside)) : demo.Air,
            new(mean, gusts), circuitFeet is { } feet ? Length.FromFeet(feet) : null, margin: margin,
            thresholdHeight: overFeet is { } over ? Length.FromFeet(over) : null);
    }
}
