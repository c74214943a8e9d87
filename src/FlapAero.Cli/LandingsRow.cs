using UnitsNet;

namespace FlapAero.Cli;

/// <summary>
/// One row of a table of landings, made into a landing. What the library refuses is kept, with the columns that it comes from, and the
/// rest of the row is looked through all the same.
/// </summary>
internal sealed class LandingsRow(IReadOnlyDictionary<LandingVariable, double> values)
{
    private readonly List<(string Columns, string Refusal)> _faults = [];

    /// <summary>What is wrong with the row, as it was found.</summary>
    public IReadOnlyList<(string Columns, string Refusal)> Faults => _faults;

    /// <summary>The landing; not to be flown where the row has faults.</summary>
    public (LandingSetup Setup, LandingConditions Conditions) Landing()
    {
        LandingSetup setup = new()
        {
            Aeroplane = Aeroplane(),
            Technique = Technique(),
            Air = Made(
                Air.StandardSeaLevel, () => Air.OfDensity(Density.FromKilogramsPerCubicMeter(this[LandingVariable.Density])),
                LandingVariable.Density),
            Runway = Made(new Runway(), () => new Runway { Slope = this[LandingVariable.RunwaySlope] }, LandingVariable.RunwaySlope) with
            {
                Surface = Made(
                    RunwaySurface.DryPaved,
                    () => RunwaySurface.Of(
                        "as the table has it", this[LandingVariable.RollingFriction], this[LandingVariable.BrakingFriction]),
                    LandingVariable.RollingFriction, LandingVariable.BrakingFriction),
            },
            Headwind = Speed.FromMetersPerSecond(this[LandingVariable.Headwind]),
        };
        OneCosineGust? gust = Made(
            null,
            () => new OneCosineGust(
                Speed.FromMetersPerSecond(this[LandingVariable.GustChange]), Duration.FromSeconds(this[LandingVariable.GustStart]),
                Duration.FromSeconds(this[LandingVariable.GustLength])),
            LandingVariable.GustChange, LandingVariable.GustStart, LandingVariable.GustLength);
        foreach ((LandingVariable variable, RefusedInputException fault) in setup.Faults)
            _faults.Add((variable.Column(), fault.Message));
        return (setup, new() { Gust = gust });
    }

    private double this[LandingVariable variable] => values[variable];

    private LandingAeroplane Aeroplane() => new()
    {
        Mass = Mass.FromKilograms(this[LandingVariable.Mass]),
        WingArea = Area.FromSquareMeters(this[LandingVariable.WingArea]),
        Span = Length.FromMeters(this[LandingVariable.Span]),
        WingHeight = Length.FromMeters(this[LandingVariable.WingHeight]),
        ZeroLiftDragCoefficient = this[LandingVariable.ZeroLiftDragCoefficient],
        Oswald = this[LandingVariable.OswaldFactor],
        MaximumLiftCoefficient = this[LandingVariable.MaximumLiftCoefficient],
        NoseHighLiftCoefficient = this[LandingVariable.NoseHighLiftCoefficient],
        LevelLiftCoefficient = this[LandingVariable.LevelLiftCoefficient],
        IdleThrust = Made(
            IdleThrust.None,
            () => IdleThrust.Quadratic(
                Force.FromNewtons(this[LandingVariable.IdleThrust]), this[LandingVariable.IdleThrustSlope],
                this[LandingVariable.IdleThrustCurvature]),
            LandingVariable.IdleThrust, LandingVariable.IdleThrustSlope, LandingVariable.IdleThrustCurvature),
    };

    private LandingTechnique Technique() => new()
    {
        ThresholdHeight = Length.FromMeters(this[LandingVariable.ThresholdHeight]),
        ThresholdSpeed = Speed.FromMetersPerSecond(this[LandingVariable.ThresholdSpeed]),
        PathAngle = Angle.FromDegrees(this[LandingVariable.PathAngle]),
        FlareTimeConstant = Duration.FromSeconds(this[LandingVariable.FlareTimeConstant]),
        HoldOffHeight = Length.FromMeters(this[LandingVariable.HoldOffHeight]),
        TouchdownLiftFraction = this[LandingVariable.TouchdownLiftFraction],
        PowerCutHeight = Length.FromMeters(this[LandingVariable.PowerCutHeight]),
        PowerCutTime = Duration.FromSeconds(this[LandingVariable.PowerCutTime]),
        SlipDragCoefficient = this[LandingVariable.SlipDragCoefficient],
        NoseLowerSpeedFraction = this[LandingVariable.NoseLowerSpeedFraction],
        // A table has the coefficient of the brakes as they are used.
        BrakingShare = 1,
    };

    private T Made<T>(T otherwise, Func<T> make, params ReadOnlySpan<LandingVariable> columns)
    {
        try
        {
            return make();
        }
        catch (RefusedInputException refused)
        {
            _faults.Add((string.Join(", ", columns.ToArray().Select(column => column.Column())), refused.Message));
            return otherwise;
        }
    }
}
