using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>A landing that was asked for, and what became of it. Distances in metres, speeds in m/s.</summary>
internal sealed class WholeLanding
{
    private readonly bool _powerToTheRoundOut;

    /// <summary>A landing in plain numbers.</summary>
    /// <param name="input">The landing.</param>
    /// <param name="powerToTheRoundOut">Whether the throttle closes from the round-out on, whatever the input's cut height.</param>
    public WholeLanding(LandingInput input, bool powerToTheRoundOut = false)
    {
        _powerToTheRoundOut = powerToTheRoundOut;
        Input = powerToTheRoundOut ? input with { PowerCutHeight = FlareHeight(input) } : input;
        Outcome = LandingSolver.Solve(Input);
    }

    public LandingInput Input { get; }

    public LandingOutcome Outcome { get; }

    public bool Happens => Outcome.Refusal == LandingRefusal.None;

    /// <summary>From 50 ft to the touchdown.</summary>
    public double Air => Checked.TouchdownDistance;

    /// <summary>From the touchdown to the stop.</summary>
    public double Roll => Checked.StopDistance - Checked.TouchdownDistance;

    /// <summary>From 50 ft to the stop.</summary>
    public double Total => Checked.StopDistance;

    public double TouchdownSpeed => Checked.TouchdownSpeed;

    public double Weight => Input.Mass * StandardConstants.Gravity;

    // A distance of a landing that did not happen is no distance.
    private LandingOutcome Checked => Happens ? Outcome : throw new InvalidOperationException(RefusalText.Explain(Outcome));

    /// <summary>The usual pilot's landing of a configuration, at standard sea level where not said otherwise.</summary>
    public static WholeLanding Of(Configuration configuration, Air? air = null, LandingPilot? pilot = null)
    {
        LandingSetup setup = LandingSetup.For(configuration, pilot: pilot, air: air);
        return new(setup.Checked(), setup.Technique.PowerCutHeight is null);
    }

    /// <summary>The same landing with something changed; a pilot who keeps the power to the round-out still does.</summary>
    public WholeLanding With(Func<LandingInput, LandingInput> change) => new(change(Input), _powerToTheRoundOut);

    /// <summary>The same landing, the throttle closing from the threshold on.</summary>
    public WholeLanding ThrottleClosedFromTheThreshold() => new(Input with { PowerCutHeight = Input.ThresholdHeight });

    /// <summary>The threshold crossed faster or slower.</summary>
    public WholeLanding Faster(Speed by) => With(input => input with { ThresholdSpeed = input.ThresholdSpeed + by.MetersPerSecond });

    /// <summary>A headwind as a share of the threshold speed; a tailwind is negative.</summary>
    public WholeLanding IntoWind(double share) => With(input => input with { Headwind = share * input.ThresholdSpeed });

    // Where the sink rate of a path over the ground dies away to the hold-off height: h_h + s τ.
    private static double FlareHeight(in LandingInput input)
    {
        double slope = Math.Tan(Angle.FromDegrees(input.PathAngleDegrees).Radians);
        double speed = input.ThresholdSpeed, wind = input.Headwind, secant = 1 + slope * slope;
        double sink = slope * (Math.Sqrt(speed * speed * secant - wind * wind * slope * slope) - wind) / secant;
        return input.HoldOffHeight + sink * input.FlareTimeConstant;
    }
}
