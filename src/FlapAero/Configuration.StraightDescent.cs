using FlapAero.Equations;
using MathNet.Numerics.OdeSolvers;
using UnitsNet;

namespace FlapAero;

/// <content>A straight line down on which the speed is free.</content>
public sealed partial class Configuration
{
    // The speed changes by a tenth or two on a final: many more than the digits that are shown need.
    private const int DescentPoints = 41;

    private static readonly Length HighestDescent = Length.FromMeters(3000);

    /// <summary>
    /// A straight descent from one height to another with the throttle closed as long as the aeroplane is faster than the speed to be
    /// held: what drag does not spend becomes speed. At that speed on a line no steeper than the closed throttle's glide, power holds it.
    /// </summary>
    /// <remarks>
    /// Formula: d(V²/2g)/ds = (T_i − D)/W + sin γ along the path s, L = W cos γ, by Runge and Kutta's fourth-order method; zero where
    /// that would take V below the speed to be held. Range: still air of one density, lines of 0° to 30°, distance to 20 km, the end from 0 m to 3000 m,
    /// from the stall to the setting's maximum speed all the way. Source: [anderson-itf] for the forces, [uiuc-propellers] for the propeller's
    /// coefficients.
    /// </remarks>
    /// <param name="airspeed">The airspeed at the beginning.</param>
    /// <param name="height">The height there.</param>
    /// <param name="toHeight">The height at the end.</param>
    /// <param name="distance">The distance over the ground between the two.</param>
    /// <param name="held">The speed to be held, at most that at the beginning, which it is where none is given.</param>
    /// <returns>The descent to its end, or why there is none: <see cref="IdleThrust"/> has no answer on the way.</returns>
    /// <exception cref="RefusedInputException">
    /// Stalled or too fast on the way, a line that climbs or is too steep, a distance out of range.
    /// </exception>
    /// <example><code>flapsUp.StraightDescent(flapsUp.ReferenceSpeed(Air.StandardSeaLevel), Length.FromFeet(211), Length.FromFeet(50), Length.FromFeet(1000)).Value[^1].Airspeed.True.Knots // 77.2</code></example>
    public Outcome<IReadOnlyList<DescentPoint>> StraightDescent(
        Airspeed airspeed, Length height, Length toHeight, Length distance, Airspeed? held = null)
    {
        ArgumentNullException.ThrowIfNull(airspeed);
        Require.Between(distance, Length.FromMeters(1), Length.FromKilometers(20), "distance", "A final is no longer.");
        Require.Between(toHeight, Length.Zero, HighestDescent, "height at the end", "It is counted from the runway, and a final is no higher.");
        Require.Between(
            height, toHeight, toHeight + distance * Math.Tan(SteepestPath.Radians), "height at the beginning",
            $"The line leads down, at {Require.Text(SteepestPath)} at most.");
        Air air = airspeed.Air;
        Airspeed least = held is null ? airspeed : Airspeed.FromTrue(
            Require.Between(held.True, Speed.Zero, airspeed.True, "speed to be held", "A closed throttle leads down to it, not up.", nameof(held)), air);
        double end = distance.Meters, drop = (height - toHeight).Meters;
        Angle path = Angle.FromRadians(-Math.Atan(drop / end));
        double lowest = EnergyLaws.Height(0, least.SiTrue);
        bool balanced = true;

        double Slope(double kinetic)
        {
            var at = new Airspeed(EnergyLaws.Speed(Math.Max(kinetic, lowest)), air);
            double needed = OnPath(at, path).Thrust.Newtons;
            if (IdleThrust(at) is not { } idle)
            {
                balanced = false;
                return 0;
            }
            double slope = EnergyLaws.PerPath(idle.Newtons, needed, _weight);
            return kinetic > lowest ? slope : Math.Max(0, slope);
        }

        double[] kinetic = RungeKutta.FourthOrder(
            EnergyLaws.Height(0, airspeed.SiTrue), 0, Math.Sqrt(end * end + drop * drop), DescentPoints, (_, energy) => Slope(energy));
        if (!balanced)
            return new(
                $"The propeller of {Aeroplane.Name} does not idle steadily all the way down: begin slower, "
                + "or give its table more rows in the aeroplane's file.");
        return new([.. kinetic.Select((energy, i) => At(energy, i / (DescentPoints - 1.0)))]);

        DescentPoint At(double energy, double share)
        {
            var at = new Airspeed(EnergyLaws.Speed(Math.Max(energy, lowest)), air);
            NotTooFast(at);
            return new DescentPoint(share * end, height.Meters - share * drop, at);
        }
    }
}
