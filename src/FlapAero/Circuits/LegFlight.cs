using FlapAero.Equations;

namespace FlapAero;

/// <summary>Where an aeroplane is and where its nose points, in the frame of a right-hand circuit. SI doubles, radians.</summary>
internal readonly record struct FlightState(double X, double Y, double Height, double Time, double Heading);

/// <summary>
/// The steady flight of one leg, straight or turning to the right: all that <see cref="TurnLaws"/> and <see cref="TrackLaws"/>
/// say of it. Plain numbers in the frame of a right-hand circuit: x along the landing, y to its right.
/// </summary>
internal sealed class LegFlight
{
    public required Configuration Configuration { get; init; }

    public required Airspeed Airspeed { get; init; }

    public required double PathAngle { get; init; }

    public required double Thrust { get; init; }

    public required double Bank { get; init; }

    public required double WindX { get; init; }

    public required double WindY { get; init; }

    /// <summary>Heading of a straight leg; where a turn begins.</summary>
    public required double Heading { get; init; }

    /// <summary>Crab of a straight leg, positive with the nose to the right.</summary>
    public double Crab { get; init; }

    public double Speed => Airspeed.SiTrue;

    // Not −V sin γ: level flight would sink at −0.
    public double Sink => 0 - Speed * Math.Sin(PathAngle);

    public double HorizontalSpeed => Speed * Math.Cos(PathAngle);

    public bool Turns => Bank > 0;

    public double Rate => Turns ? TurnLaws.Rate(Speed, Bank) : 0;

    public double Radius => TurnLaws.Radius(Speed, PathAngle, Bank);

    public double GroundSpeed => Math.Sqrt(SquareOf(HorizontalSpeed * Math.Cos(Heading) + WindX)
        + SquareOf(HorizontalSpeed * Math.Sin(Heading) + WindY));

    /// <summary>The state a time later; earlier where the time is negative.</summary>
    public FlightState After(FlightState from, double time)
    {
        (double x, double y) = Turns
            ? TurnLaws.Displacement(Radius, from.Heading, Rate, time, WindX, WindY)
            : (time * (HorizontalSpeed * Math.Cos(Heading) + WindX), time * (HorizontalSpeed * Math.Sin(Heading) + WindY));
        return new(
            from.X + x, from.Y + y, from.Height - Sink * time, from.Time + time, Turns ? from.Heading + Rate * time : Heading);
    }

    public double Distance(double beginHeading, double time) => Turns
        ? TurnLaws.Distance(HorizontalSpeed, beginHeading, Rate, time, WindX, WindY)
        : GroundSpeed * time;

    private static double SquareOf(double value) => value * value;
}
