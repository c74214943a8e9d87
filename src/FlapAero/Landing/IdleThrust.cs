using System.Globalization;
using MathNet.Numerics;
using UnitsNet;

namespace FlapAero;

/// <summary>
/// Thrust of the idling engine by airspeed, T_i(V) = T_0 + T_1 V + T_2 V²: with a fixed-pitch propeller it brakes at approach speed and
/// pulls at rest. A constant is the special case. Immutable, thread-safe.
/// </summary>
public sealed record IdleThrust
{
    private const int RowsOfConfiguration = 25;
    private const double FastestOfConfiguration = 1.5;
    private const double Steepest = 1e6;
    private const string NoSuchEngine = "No engine of a light aeroplane does that.";

    private static readonly Force Strongest = Force.FromMeganewtons(1);
    private static readonly Speed Fastest = Speed.FromMetersPerSecond(1000);

    private IdleThrust(Force atRest, double slope, double curvature) => (AtRest, Slope, Curvature) = (atRest, slope, curvature);

    /// <summary>No thrust and no drag at any airspeed.</summary>
    public static IdleThrust None { get; } = Constant(Force.Zero);

    /// <summary>T_0, with the aeroplane at rest.</summary>
    public Force AtRest { get; }

    /// <summary>T_1, N s/m.</summary>
    public double Slope { get; }

    /// <summary>T_2, N s²/m².</summary>
    public double Curvature { get; }

    /// <summary>The same thrust at every airspeed.</summary>
    /// <remarks>Formula: T_1 = T_2 = 0. Range: to 1 MN either way. Source: [canonical-landing].</remarks>
    /// <param name="thrust">T_i.</param>
    /// <returns>The constant.</returns>
    /// <exception cref="RefusedInputException">A thrust outside the range.</exception>
    /// <example><code>IdleThrust.Constant(Force.FromNewtons(-50)).At(Speed.FromKnots(70)).Newtons // -50.0</code></example>
    public static IdleThrust Constant(Force thrust) => Quadratic(thrust, 0, 0);

    /// <summary>A thrust by its three numbers.</summary>
    /// <remarks>Formula: T_0 + T_1 V + T_2 V². Range: each to a million of its unit either way. Source: [canonical-landing].</remarks>
    /// <param name="atRest">T_0.</param>
    /// <param name="slope">T_1, N s/m.</param>
    /// <param name="curvature">T_2, N s²/m².</param>
    /// <returns>The thrust.</returns>
    /// <exception cref="RefusedInputException">A number outside its range.</exception>
    /// <example><code>IdleThrust.Quadratic(Force.FromNewtons(200), -2, -0.1).At(Speed.FromMetersPerSecond(10)).Newtons // 170.0</code></example>
    public static IdleThrust Quadratic(Force atRest, double slope, double curvature) => new(
        Require.Between(atRest, -Strongest, Strongest, "idle thrust at rest", NoSuchEngine),
        Require.Between(slope, -Steepest, Steepest, "change of the idle thrust with airspeed", NoSuchEngine),
        Require.Between(curvature, -Steepest, Steepest, "curvature of the idle thrust", NoSuchEngine));

    /// <summary>The quadratic nearest to a table.</summary>
    /// <remarks>Formula: least squares over the rows. Range: three airspeeds or more, to 1 000 m/s. Source: [landing-conditions].</remarks>
    /// <param name="rows">True airspeed and thrust.</param>
    /// <returns>The thrust.</returns>
    /// <exception cref="RefusedInputException">Fewer than three different airspeeds, or a value outside its range.</exception>
    /// <example><code>IdleThrust.Near([(Speed.Zero, Force.FromNewtons(300)), (Speed.FromMetersPerSecond(20), Force.FromNewtons(100)), (Speed.FromMetersPerSecond(40), Force.FromNewtons(-100))]).At(Speed.FromMetersPerSecond(30)).Newtons // 0.0</code></example>
    public static IdleThrust Near(IEnumerable<(Speed Airspeed, Force Thrust)> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        (Speed Airspeed, Force Thrust)[] table = [.. rows];
        double[] speeds = [.. table.Select(row => Require.Between(
            row.Airspeed, Speed.Zero, Fastest, "airspeed of a row", "An aeroplane flies forwards.", nameof(rows)).MetersPerSecond)];
        double[] thrusts = [.. table.Select(row => Require.Between(row.Thrust, -Strongest, Strongest, "thrust of a row", NoSuchEngine, nameof(rows)).Newtons)];
        int different = speeds.Distinct().Count();
        if (different < 3)
            throw Require.Refused(
                nameof(rows), "idle thrust", string.Create(CultureInfo.InvariantCulture, $"a table of {different} airspeeds"),
                "three airspeeds or more", "A curve has three numbers.");
        double[] fit = Fit.Polynomial(speeds, thrusts, 2);
        return new(Force.FromNewtons(fit[0]), fit[1], fit[2]);
    }

    /// <summary>The idling propeller of a configuration, from rest to one and a half times its stalling speed.</summary>
    /// <remarks>
    /// Formula: the quadratic nearest to <see cref="Propeller.IdlingAtRest"/> and <see cref="Configuration.IdleThrust"/> at 25 even
    /// airspeeds. Range: as far as the propeller's table reaches, which must be three of them. Source: [uiuc-propellers] for the
    /// coefficients; the engine's line is this model's own.
    /// </remarks>
    /// <param name="configuration">Aeroplane and flap.</param>
    /// <param name="air">The air.</param>
    /// <returns>The thrust.</returns>
    /// <exception cref="RefusedInputException">A propeller that does not idle from rest over three airspeeds at least.</exception>
    /// <example><code>IdleThrust.FromConfiguration(flapsUp, Air.StandardSeaLevel).At(Speed.FromKnots(70)).Newtons // -174</code></example>
    public static IdleThrust FromConfiguration(Configuration configuration, Air air)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(air);
        double fastest = FastestOfConfiguration * configuration.StallSpeed(air).SiTrue;
        List<(Speed, Force)> rows = [];
        for (int i = 0; i < RowsOfConfiguration; i++)
        {
            Speed speed = Speed.FromMetersPerSecond(fastest * i / (RowsOfConfiguration - 1));
            Force? thrust = i == 0
                ? configuration.Aeroplane.Propeller.IdlingAtRest(air, configuration.Aeroplane.Engine)?.Thrust
                : configuration.IdleThrust(FlapAero.Airspeed.FromTrue(speed, air));
            if (thrust is not { } known)
                break;
            rows.Add((speed, known));
        }

        return Near(rows);
    }

    /// <summary>A constant thrust.</summary>
    /// <param name="thrust">T_i.</param>
    public static implicit operator IdleThrust(Force thrust) => Constant(thrust);

    /// <summary>Thrust at an airspeed.</summary>
    /// <remarks>Formula: T_0 + T_1 V + T_2 V². Range: to 1 000 m/s, also backwards, as in a tailwind at the stop. Source: [canonical-landing].</remarks>
    /// <param name="airspeed">V, true airspeed.</param>
    /// <returns>T_i.</returns>
    /// <exception cref="RefusedInputException">An airspeed outside the range.</exception>
    /// <example><code>IdleThrust.Quadratic(Force.FromNewtons(200), -2, -0.1).At(Speed.FromMetersPerSecond(30)).Newtons // 50.0</code></example>
    public Force At(Speed airspeed)
    {
        double speed = Require.Between(airspeed, -Fastest, Fastest, "airspeed", "No light aeroplane rolls or flies faster.").MetersPerSecond;
        return Force.FromNewtons(AtRest.Newtons + speed * (Slope + speed * Curvature)).ToUnit(AtRest.Unit);
    }

    /// <summary>The three numbers.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{AtRest.Newtons:0} N at rest, {Slope:0.##} N s/m, {Curvature:0.###} N s²/m²");
}
