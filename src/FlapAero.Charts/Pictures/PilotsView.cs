using UnitsNet;
using UnitsNet.Units;

namespace FlapAero.Charts;

/// <summary>
/// Where a pilot's eye is on final, and how the nose stands there: what a view over the nose is drawn from. Wings
/// level, on the runway's centreline; in still air unless a what-if gives a wind. Immutable.
/// </summary>
public sealed record PilotsView
{
    private PilotsView(string name, SteadyFlight flight, Angle pathOverGround, Length beforeThreshold, Length wheelHeight) =>
        (Name, Flight, PathOverGround, BeforeThreshold, WheelHeight) = (name, flight, pathOverGround, beforeThreshold, wheelHeight);

    /// <summary>The eye above the wheels: invented, for the drawing.</summary>
    public static Length EyeAboveWheels { get; } = Length.FromFeet(6);

    /// <summary>The name of the view.</summary>
    public string Name { get; private init; }

    /// <summary>The flight down the path: its attitude decides where horizon and cowling stand.</summary>
    public SteadyFlight Flight { get; }

    /// <summary>How far the wheels are before the threshold.</summary>
    public Length BeforeThreshold { get; }

    /// <summary>How high the wheels are above the runway.</summary>
    public Length WheelHeight { get; private init; }

    /// <summary>How high the eye is above the runway.</summary>
    public Length EyeHeight => WheelHeight + EyeAboveWheels;

    /// <summary>The view from a path that crosses the threshold at the usual pilot's height.</summary>
    /// <param name="name">The name of the view.</param>
    /// <param name="configuration">The aeroplane with its flaps.</param>
    /// <param name="airspeed">The speed flown.</param>
    /// <param name="pathAngle">The angle of the path, positive down.</param>
    /// <param name="before">How far before the threshold.</param>
    /// <returns>The view.</returns>
    /// <exception cref="RefusedInputException">The aeroplane does not fly so, or the eye is not before the
    /// threshold.</exception>
    public static PilotsView OnPath(
        string name, Configuration configuration, Airspeed airspeed, Angle pathAngle, Length before)
    {
        Require.Words(name, "name of the view");
        ArgumentNullException.ThrowIfNull(configuration);
        if (!(before.Meters is >= 0 and <= 10_000))
            throw Require.RefusedWhole(
                nameof(before),
                $"The eye is {QuantityText.Of(before)} before the threshold; allowed are 0 to 10 km, where a runway can be drawn.");
        if (!(pathAngle.Degrees is >= 1 and <= 12))
            throw Require.RefusedWhole(
                nameof(pathAngle), $"The path leads down at {QuantityText.Of(pathAngle)}; allowed are 1° to 12°.");
        return On(name, configuration, configuration.OnPath(airspeed, -pathAngle), pathAngle, before);
    }

    /// <summary>The same in a steady wind: the path is the one over the ground, and the nose points into the wind across.</summary>
    /// <param name="name">The name of the view.</param>
    /// <param name="configuration">The aeroplane with its flaps.</param>
    /// <param name="airspeed">The speed flown.</param>
    /// <param name="path">The angle of the path over the ground, positive down.</param>
    /// <param name="before">How far before the threshold.</param>
    /// <param name="headwind">The wind along the runway; a tailwind is negative.</param>
    /// <param name="crosswind">The wind across it, positive from the right.</param>
    /// <returns>The view.</returns>
    /// <exception cref="RefusedInputException">The aeroplane does not fly so, or no heading holds the centreline.</exception>
    internal static PilotsView InWind(
        string name, Configuration configuration, Airspeed airspeed, Angle path, Length before, Speed headwind, Speed crosswind)
    {
        SteadyFlight flight = configuration.OnPathOverGround(airspeed, path, headwind);
        double level = airspeed.True.MetersPerSecond * Math.Cos(flight.PathAngle.Radians), across = crosswind.MetersPerSecond;
        return Math.Abs(across) < level
            ? On(name, configuration, flight, path, before) with { Crab = Angle.FromRadians(Math.Asin(across / level)).ToUnit(AngleUnit.Degree) }
            : throw Require.RefusedWhole(
                nameof(crosswind), $"The wind across is {QuantityText.Of(crosswind)}: no heading holds the centreline at this airspeed.");
    }

    private static PilotsView On(string name, Configuration configuration, SteadyFlight flight, Angle path, Length before)
    {
        Length height = configuration.UsualPilot.ThresholdHeight + before * Math.Tan(path.Radians);
        return new PilotsView(name.Trim(), flight, -path, before, height.ToUnit(LengthUnit.Foot));
    }

    /// <summary>The same flight, as far from the threshold, above the path.</summary>
    /// <param name="name">The name of this view.</param>
    /// <param name="above">How much higher; below the path where negative.</param>
    /// <returns>The view.</returns>
    /// <exception cref="RefusedInputException">The wheels would be on the ground.</exception>
    public PilotsView AbovePath(string name, Length above)
    {
        Require.Words(name, "name of the view");
        Length height = WheelHeight + above;
        return height > Length.Zero && height < Length.FromFeet(5000)
            ? this with { Name = name.Trim(), WheelHeight = height }
            : throw Require.RefusedWhole(
                nameof(above),
                $"{QuantityText.Of(above)} from a height of {QuantityText.Of(WheelHeight)} puts the wheels at {QuantityText.Of(height, "ft 0.0")}; allowed is above the ground and below 5000 ft.");
    }

    /// <summary>The path over the ground, positive up: in still air the one through the air.</summary>
    internal Angle PathOverGround { get; }

    /// <summary>How far the nose points to the right of the centreline.</summary>
    internal Angle Crab { get; private init; } = Angle.Zero;

    /// <summary>How far below the fuselage's level line the path leads: in still air α − i_w, whatever the path's angle.</summary>
    internal Angle PathBelowLevelLine => (Flight.PitchAttitude - PathOverGround).ToUnit(AngleUnit.Degree);

    /// <summary>Where the eye's own path meets the runway's level.</summary>
    internal Length RingPastThreshold => EyeHeight / Math.Tan(-PathOverGround.Radians) - BeforeThreshold;

    internal SeriesStyle Style => Palette.For(Flight.Configuration);
}
