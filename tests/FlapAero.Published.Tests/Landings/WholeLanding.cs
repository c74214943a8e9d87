using FlapAero.Equations;
using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>A landing that was asked for, and what became of it. Distances in metres, speeds in m/s.</summary>
internal sealed class WholeLanding
{
    public WholeLanding(LandingInput input)
    {
        Input = input;
        Outcome = LandingSolver.Solve(input);
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

    /// <summary>The canonical landing of a configuration, at standard sea level where not said otherwise.</summary>
    public static WholeLanding Of(Configuration configuration, Air? air = null) => new(LandingSetup.For(configuration, LandingRunway.On(RunwaySurface.DryPaved, air)).Input());

    /// <summary>The same landing with something changed.</summary>
    public WholeLanding With(Func<LandingInput, LandingInput> change) => new(change(Input));

    /// <summary>The threshold crossed faster or slower.</summary>
    public WholeLanding Faster(Speed by) => With(input => input with { ThresholdSpeed = input.ThresholdSpeed + by.MetersPerSecond });

    /// <summary>A headwind as a share of the threshold speed; a tailwind is negative.</summary>
    public WholeLanding IntoWind(double share) => With(input => input with { Headwind = share * input.ThresholdSpeed });
}
