using UnitsNet;
using UnitsNet.Units;

namespace FlapAero.Charts;

/// <summary>
/// Where a pilot's eye is on final, and how the nose stands there: what a view over the nose is drawn from. Wings
/// level, on the runway's centreline, in still air. Immutable.
/// </summary>
public sealed record PilotsView
{
    private PilotsView(string name, SteadyFlight flight, Length beforeThreshold, Length wheelHeight) =>
        (Name, Flight, BeforeThreshold, WheelHeight) = (name, flight, beforeThreshold, wheelHeight);

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
        SteadyFlight flight = configuration.OnPath(airspeed, -pathAngle);
        Length height = configuration.UsualPilot.ThresholdHeight + before * Math.Tan(pathAngle.Radians);
        return new PilotsView(name.Trim(), flight, before, height.ToUnit(LengthUnit.Foot));
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

    /// <summary>How far below the fuselage's level line the path leads: α − i_w, whatever the path's angle.</summary>
    internal Angle PathBelowLevelLine => (Flight.PitchAttitude - Flight.PathAngle).ToUnit(AngleUnit.Degree);

    /// <summary>Where the eye's own path meets the runway's level.</summary>
    internal Length RingPastThreshold => EyeHeight / Math.Tan(-Flight.PathAngle.Radians) - BeforeThreshold;

    internal SeriesStyle Style => Palette.For(Flight.Configuration);
}
