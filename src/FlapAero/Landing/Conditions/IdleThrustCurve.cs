using System.Globalization;
using MathNet.Numerics.Interpolation;
using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>
/// Thrust of the idling engine by airspeed, T_i(V): with a fixed-pitch propeller it brakes at approach speed and pulls at rest. Between the
/// rows a curve that keeps the table's own rises and falls. Immutable, thread-safe.
/// </summary>
public sealed class IdleThrustCurve
{
    private const int RowsOfConfiguration = 61;

    private readonly CubicSpline _spline;
    private readonly double _fastest;

    /// <summary>A curve from a table.</summary>
    /// <param name="rows">True airspeed and thrust, at least three rows, from rest upwards.</param>
    /// <exception cref="RefusedInputException">
    /// Too few rows, rows out of order, a first row not at rest, or a value that is not finite.
    /// </exception>
    public IdleThrustCurve(IEnumerable<(Speed Airspeed, Force Thrust)> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        Rows = [.. rows];
        double[] speeds =
            [.. Rows.Select(row => Require.In(row.Airspeed, SpeedUnit.MeterPerSecond, "airspeed of a row", nameof(rows)))];
        double[] thrusts =
            [.. Rows.Select(row => Require.In(row.Thrust, ForceUnit.Newton, "thrust of a row", nameof(rows)))];
        if (Rows.Count < 3 || speeds[0] != 0)
            throw Require.Refused(
                nameof(rows), "idle thrust", string.Create(CultureInfo.InvariantCulture, $"a table of {Rows.Count} rows"),
                "a table of three rows or more, the first at rest", "The roll ends there.");
        for (int i = 0; i < speeds.Length; i++)
        {
            if (Math.Abs(thrusts[i]) > 1e6 || speeds[i] > 1e3 || (i > 0 && speeds[i] < speeds[i - 1] + 0.01))
                throw Row(i);
        }

        _spline = CubicSpline.InterpolatePchipSorted(speeds, thrusts);
        _fastest = speeds[^1];
    }

    /// <summary>The table.</summary>
    public IReadOnlyList<(Speed Airspeed, Force Thrust)> Rows { get; }

    /// <summary>The fastest row: beyond it nothing is known, and a landing that gets there is an error.</summary>
    public Speed Fastest => Rows[^1].Airspeed;

    /// <summary>The idling propeller of a configuration, from rest to the flap setting's maximum speed.</summary>
    /// <remarks>
    /// Formula: rows of <see cref="Propeller.IdlingAtRest"/> and <see cref="Configuration.IdleThrust"/> at 61 even airspeeds. Range: as far
    /// as the propeller's table reaches. Source: [uiuc-propellers] for the coefficients; the engine's line is this model's own.
    /// </remarks>
    /// <param name="configuration">Aeroplane and flap.</param>
    /// <param name="air">The air.</param>
    /// <returns>The curve; it ends where the balance leaves the propeller's table.</returns>
    /// <exception cref="RefusedInputException">
    /// A propeller that does not idle from rest over three rows at least.
    /// </exception>
    /// <example><code>IdleThrustCurve.FromConfiguration(flapsUp, Air.StandardSeaLevel).At(Speed.FromKnots(70)).Newtons // -175</code></example>
    public static IdleThrustCurve FromConfiguration(Configuration configuration, Air air)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        ArgumentNullException.ThrowIfNull(air);
        double fastest = configuration.MaximumSpeed(air).SiTrue * (1 - 1e-9);
        List<(Speed, Force)> rows = [];
        for (int i = 0; i < RowsOfConfiguration; i++)
        {
            Speed speed = Speed.FromMetersPerSecond(fastest * i / (RowsOfConfiguration - 1));
            Force? thrust = i == 0
                ? configuration.Aeroplane.Propeller.IdlingAtRest(air, configuration.Aeroplane.Engine)?.Thrust
                : configuration.IdleThrust(Airspeed.FromTrue(speed, air));
            if (thrust is not { } known)
                break;
            rows.Add((speed, known));
        }

        return new(rows);
    }

    /// <summary>Thrust at an airspeed.</summary>
    /// <remarks>
    /// Formula: piecewise cubic Hermite through the rows (Fritsch and Carlson). Range: rest to the fastest row. Source: [landing-conditions].
    /// </remarks>
    /// <param name="airspeed">True airspeed.</param>
    /// <returns>T_i.</returns>
    /// <exception cref="RefusedInputException">An airspeed outside the table.</exception>
    /// <example><code>new IdleThrustCurve([(Speed.Zero, Force.FromNewtons(300)), (Speed.FromMetersPerSecond(20), Force.FromNewtons(100)), (Speed.FromMetersPerSecond(40), Force.FromNewtons(-100))]).At(Speed.FromMetersPerSecond(10)).Newtons // 200.0</code></example>
    public Force At(Speed airspeed)
    {
        Require.Between(airspeed, Speed.Zero, Fastest, "airspeed", "The table of idle thrust says nothing outside it.");
        return Force.FromNewtons(SiAt(airspeed.MetersPerSecond));
    }

    /// <summary>Rows and fastest airspeed.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Rows.Count} rows to {_fastest:0.0} m/s");

    private RefusedInputException Row(int i)
    {
        (Speed airspeed, Force thrust) = Rows[i];
        string least = Require.Text(Speed.FromMetersPerSecond(0.01), airspeed);
        string most = Require.Text(Speed.FromMetersPerSecond(1000), airspeed);
        string strongest = Require.Text(Force.FromMeganewtons(1), thrust);
        return Require.Refused(
            "rows", string.Create(CultureInfo.InvariantCulture, $"idle thrust, row {i + 1}"),
            $"{Require.Text(airspeed)}, {Require.Text(thrust)}",
            $"an airspeed at least {least} above the one before and to {most}, with a thrust to {strongest}",
            "Otherwise it is no curve.");
    }

    internal double SiFastest => _fastest;

    // In a tailwind that is faster than the roll: the propeller at rest. Above the table: only a trial step gets there.
    internal double SiAt(double airspeed) => _spline.Interpolate(Math.Clamp(airspeed, 0, _fastest));
}
