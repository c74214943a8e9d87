using System.Runtime.CompilerServices;
using FlapAero.Equations;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// How the inputs of a landing are spread, each by a distribution of its own kind; of an input that is not given nothing is said.
/// Immutable, thread-safe; <c>with</c> spreads one in another way.
/// </summary>
public sealed record LandingSpread
{
    private readonly Distribution?[] _inputs;

    /// <summary>Nothing said of any input.</summary>
    public LandingSpread() => _inputs = new Distribution?[LandingVariables.All.Count];

    private LandingSpread(LandingSpread other) => _inputs = [.. other._inputs];

    private LandingSpread(IEnumerable<Distribution?> inputs) => _inputs = [.. inputs];

    /// <inheritdoc cref="LandingVariable.Mass"/>
    public Distribution<Mass>? Mass { get => Of<Mass>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.WingArea"/>
    public Distribution<Area>? WingArea { get => Of<Area>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.Span"/>
    public Distribution<Length>? Span { get => Of<Length>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.WingHeight"/>
    public Distribution<Length>? WingHeight { get => Of<Length>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.ZeroLiftDragCoefficient"/>
    public Distribution<double>? ZeroLiftDragCoefficient { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.OswaldFactor"/>
    public Distribution<double>? OswaldFactor { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.MaximumLiftCoefficient"/>
    public Distribution<double>? MaximumLiftCoefficient { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.Density"/>
    public Distribution<Density>? Density { get => Of<Density>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.Headwind"/>
    public Distribution<Speed>? Headwind { get => Of<Speed>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.ThresholdHeight"/>
    public Distribution<Length>? ThresholdHeight { get => Of<Length>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.ThresholdSpeed"/>
    public Distribution<Speed>? ThresholdSpeed { get => Of<Speed>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.PathAngle"/>
    public Distribution<Angle>? PathAngle { get => Of<Angle>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.FlareTimeConstant"/>
    public Distribution<Duration>? FlareTimeConstant { get => Of<Duration>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.HoldOffHeight"/>
    public Distribution<Length>? HoldOffHeight { get => Of<Length>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.TouchdownLiftFraction"/>
    public Distribution<double>? TouchdownLiftFraction { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.PowerCutHeight"/>
    public Distribution<Length>? PowerCutHeight { get => Of<Length>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.PowerCutTime"/>
    public Distribution<Duration>? PowerCutTime { get => Of<Duration>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.IdleThrust"/>
    public Distribution<Force>? IdleThrust { get => Of<Force>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.NoseHighLiftCoefficient"/>
    public Distribution<double>? NoseHighLiftCoefficient { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.NoseLowerSpeedFraction"/>
    public Distribution<double>? NoseLowerSpeedFraction { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.LevelLiftCoefficient"/>
    public Distribution<double>? LevelLiftCoefficient { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.RollingFriction"/>
    public Distribution<double>? RollingFriction { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.BrakingFriction"/>
    public Distribution<double>? BrakingFriction { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.RunwaySlope"/>
    public Distribution<double>? RunwaySlope { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.GustChange"/>
    public Distribution<Speed>? GustChange { get => Of<Speed>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.GustStart"/>
    public Distribution<Duration>? GustStart { get => Of<Duration>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.GustLength"/>
    public Distribution<Duration>? GustLength { get => Of<Duration>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.IdleThrustSlope"/>
    public Distribution<double>? IdleThrustSlope { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.IdleThrustCurvature"/>
    public Distribution<double>? IdleThrustCurvature { get => Of<double>(); init => Put(value); }
    /// <inheritdoc cref="LandingVariable.SlipDragCoefficient"/>
    public Distribution<double>? SlipDragCoefficient { get => Of<double>(); init => Put(value); }

    /// <summary>How an input is spread; none where it is not given.</summary>
    /// <param name="variable">The input.</param>
    /// <exception cref="RefusedInputException">No such input.</exception>
    public Distribution? this[LandingVariable variable] =>
        Enum.IsDefined(variable) ? _inputs[(int)variable] : throw ScatterCheck.NoSuchInput(variable);

    /// <summary>Of some inputs only.</summary>
    /// <param name="variables">Which.</param>
    /// <returns>The spread of those; of the others nothing is said.</returns>
    public LandingSpread Only(params IReadOnlyCollection<LandingVariable> variables)
    {
        ArgumentNullException.ThrowIfNull(variables);
        return Where(variables.Contains);
    }

    /// <summary>Of all inputs but some.</summary>
    /// <param name="variables">Which not.</param>
    /// <returns>The spread of the others.</returns>
    public LandingSpread Without(params IReadOnlyCollection<LandingVariable> variables)
    {
        ArgumentNullException.ThrowIfNull(variables);
        return Where(variable => !variables.Contains(variable));
    }

    /// <summary>The same distributions of the same inputs.</summary>
    /// <param name="other">The other spread.</param>
    public bool Equals(LandingSpread? other) => other is not null && _inputs.SequenceEqual(other._inputs);

    /// <inheritdoc/>
    public override int GetHashCode() => _inputs.Aggregate(0, HashCode.Combine);

    /// <summary>Every input of one landing, in SI and degrees, fixed; messages speak of it in the unit it was given in.</summary>
    internal static LandingSpread Fixed(LandingInput landing, Func<LandingVariable, Enum?>? unit = null)
    {
        double[] row = LandingInput.Rows([landing]).ToArray();
        return new(LandingVariables.All.Select(variable =>
            LandingVariables.Distributed(variable, DistributionLaw.Fixed(row[(int)variable]), unit?.Invoke(variable))));
    }

    /// <summary>This one, and another where it says nothing.</summary>
    internal LandingSpread Over(LandingSpread other) => new(_inputs.Zip(other._inputs, (own, below) => own ?? below));

    /// <summary>This one with an input spread by a distribution of its kind.</summary>
    internal LandingSpread With(LandingVariable variable, Distribution distribution) =>
        new(_inputs.Select((own, i) => i == (int)variable ? distribution : own));

    private LandingSpread Where(Func<LandingVariable, bool> kept) =>
        new(_inputs.Select((own, i) => kept((LandingVariable)i) ? own : null));

    private Distribution<T>? Of<T>([CallerMemberName] string name = "")
        where T : struct => (Distribution<T>?)_inputs[(int)Enum.Parse<LandingVariable>(name)];

    private void Put(Distribution? distribution, [CallerMemberName] string name = "") =>
        _inputs[(int)Enum.Parse<LandingVariable>(name)] = distribution;
}
