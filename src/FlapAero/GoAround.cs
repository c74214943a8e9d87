using FlapAero.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// What a go-around from a steady descent costs and gains: the path goes on until the throttle is open, is pulled level at a small load
/// factor, and climbs at the same airspeed and flap setting. The engine answers at once; the flaps stay where they are. Immutable. A
/// training aid: the approved manual and a qualified instructor decide.
/// </summary>
public sealed class GoAround
{
    private static readonly Length HighestCeiling = Length.FromFeet(25_000);

    private readonly double _sink;
    private readonly double _climb;
    private readonly double _curve;

    private GoAround(SteadyFlight descent, SteadyFlight climb)
    {
        (Descent, Climb) = (descent, climb);
        (_sink, _climb) = (descent.SinkRate.MetersPerSecond, -climb.SinkRate.MetersPerSecond);
        _curve = (PullUpLoadFactor - 1) * StandardConstants.Gravity;
    }

    /// <summary>How long the descent goes on before the throttle is open: two seconds of a pilot who expects it, invented.</summary>
    public static Duration Decision { get; } = Duration.FromSeconds(2);

    /// <summary>n of the pull-up: a tenth of a g, as in the round-out.</summary>
    public static double PullUpLoadFactor => 1.1;

    /// <summary>The descent that is broken off.</summary>
    public SteadyFlight Descent { get; }

    /// <summary>Full throttle at the same airspeed and flap setting; at a negative rate of climb there is no go-around.</summary>
    public SteadyFlight Climb { get; }

    /// <summary>Rate of climb, negative where full throttle only slows the descent.</summary>
    public Speed RateOfClimb => -Climb.SinkRate;

    /// <summary>The lowest that the aeroplane gets below where it was decided; none where it does not climb.</summary>
    public Length? HeightLost => _climb > 0 ? -HeightAfter(Decision + Duration.FromSeconds(_sink / _curve)) : null;

    /// <summary>The go-around from a descent.</summary>
    /// <remarks>Formula: <see cref="Configuration.ClimbAtFullThrottle"/> at the descent's airspeed. Range: any descent. Source: [anderson-itf].</remarks>
    /// <param name="descent">The descent.</param>
    /// <returns>The go-around, or why there is none: the aeroplane's file gives no full throttle.</returns>
    /// <exception cref="ArgumentNullException">No descent.</exception>
    /// <example><code>GoAround.From(flapsUp.OnPath(Airspeed.FromCalibrated(Speed.FromKnots(69), Air.StandardSeaLevel), Angle.FromDegrees(-3.5))).Value.HeightLost!.Value.Feet // 22</code></example>
    public static Outcome<GoAround> From(SteadyFlight descent)
    {
        ArgumentNullException.ThrowIfNull(descent);
        return descent.Configuration.ClimbAtFullThrottle(descent.Airspeed) is { } climb
            ? new(new GoAround(descent, climb))
            : new($"{descent.Configuration.Aeroplane.Name} has no full throttle: write fullThrottleTorque into its file.");
    }

    /// <summary>Full throttle in every flap setting from full to up, each at the same multiple of its own stalling speed.</summary>
    /// <remarks>Formula: <see cref="Configuration.ClimbAtFullThrottle"/>. Range: any aeroplane with a full throttle. Source: [anderson-itf].</remarks>
    /// <param name="aeroplane">The aeroplane.</param>
    /// <param name="mass">Its mass.</param>
    /// <param name="air">The air.</param>
    /// <param name="multiple">Of the stalling speed, 1.1 to 3; 1.3 where none is given.</param>
    /// <returns>The steps in the order in which flaps are retracted; none where the file gives no full throttle.</returns>
    /// <exception cref="RefusedInputException">A mass or a multiple outside its range.</exception>
    /// <example><code>GoAround.Steps(DemoAeroplanes.TrainerH4, Mass.FromKilograms(1000), Air.StandardSeaLevel).Count // 4</code></example>
    public static IReadOnlyList<SteadyFlight> Steps(Aeroplane aeroplane, Mass mass, Air air, double multiple = 1.3)
    {
        ArgumentNullException.ThrowIfNull(aeroplane);
        ArgumentNullException.ThrowIfNull(air);
        Require.Between(multiple, 1.1, 3, "multiple of the stalling speed", "Slower is the stall; faster is no climb.");
        return
        [
            .. aeroplane.FlapSettings.Reverse().Select(setting => aeroplane.Configure(setting, mass))
                .Select(configuration => configuration.ClimbAtFullThrottle(configuration.ReferenceSpeed(air, multiple))).OfType<SteadyFlight>(),
        ];
    }

    /// <summary>The density altitude above which full throttle no longer climbs.</summary>
    /// <remarks>
    /// Formula: the root of the rate of climb in standard air, at a multiple of the stalling speed. Range: to 25 000 ft, which is the answer
    /// where the aeroplane still climbs there. Source: [anderson-itf], [gagg-farrar].
    /// </remarks>
    /// <param name="configuration">Aeroplane, flap and mass.</param>
    /// <param name="multiple">Of the stalling speed, 1.1 to 3; 1.3 where none is given.</param>
    /// <returns>The altitude: zero where it does not climb at sea level; no answer where the file gives no full throttle.</returns>
    /// <exception cref="RefusedInputException">A multiple outside its range.</exception>
    /// <example><code>GoAround.Ceiling(flapsUp)!.Value.Feet // 15784</code></example>
    public static Length? Ceiling(Configuration configuration, double multiple = 1.3)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        Require.Between(multiple, 1.1, 3, "multiple of the stalling speed", "Slower is the stall; faster is no climb.");
        if (configuration.Aeroplane.FullThrottle is null) return null;
        bool Climbs(double feet)
        {
            Air air = Air.Standard(Length.FromFeet(feet));
            return configuration.ClimbAtFullThrottle(configuration.ReferenceSpeed(air, multiple))!.SinkRate < Speed.Zero;
        }

        (double low, double high) = (0, HighestCeiling.Feet);
        if (!Climbs(low)) return Length.FromFeet(0);
        if (Climbs(high)) return HighestCeiling;
        while (high - low > 1)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Climbs(middle) ? (middle, high) : (low, middle);
        }

        return Length.FromFeet(low);
    }

    /// <summary>Height above where it was decided, after a time.</summary>
    /// <remarks>
    /// Formula: −s t until the throttle is open; then ½ (n − 1) g t² more until the path climbs at its rate, and straight on. Where full
    /// throttle does not climb, the descent only becomes flatter. Range: 0 to 10 minutes. Source: [landing-conditions].
    /// </remarks>
    /// <param name="time">Since the decision.</param>
    /// <returns>The height, negative below.</returns>
    /// <exception cref="RefusedInputException">A time outside its range.</exception>
    /// <example><code>GoAround.From(flapsUp.OnPath(Airspeed.FromCalibrated(Speed.FromKnots(69), Air.StandardSeaLevel), Angle.FromDegrees(-3.5))).Value.HeightAfter(Duration.FromSeconds(30)).Feet // 232</code></example>
    public Length HeightAfter(Duration time)
    {
        double seconds = Require.Between(time, Duration.Zero, Duration.FromMinutes(10), "time", "By then the aeroplane is elsewhere.").Seconds;
        double pulling = Math.Clamp(seconds - Decision.Seconds, 0, (_sink + _climb) / _curve);
        double climbing = Math.Max(0, seconds - Decision.Seconds - (_sink + _climb) / _curve);
        double height = -_sink * Math.Min(seconds, Decision.Seconds + pulling) + 0.5 * _curve * pulling * pulling + _climb * climbing;
        return Length.FromMeters(height).ToUnit(LengthUnit.Foot);
    }
}
