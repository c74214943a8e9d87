namespace FlapAero.Charts.Tests.Pictures;

public class SideViewTests
{
    [Theory]
    [MemberData(nameof(Drawn.EachConfiguration), MemberType = typeof(Drawn))]
    public void Lines_ReadBack_StandAtTheModelsAngles(int which)
    {
        Configuration c = Drawn.Configurations.ElementAt(which);
        SteadyFlight flight = Drawn.Final(c);
        string svg = Charts.Pictures.SideView("Side", ("one", flight)).ToSvg();
        double Angle(string part) => Drawn.Rise(Drawn.Points(svg, part)[0]);
        Assert.Equal(0, Angle("horizon"), 0.01);
        Assert.Equal(-3.5, Angle("path"), 0.05);
        Assert.Equal(flight.PitchAttitude.Degrees, Angle("level-line"), 0.05);
        Assert.Equal(flight.AngleOfAttack.Degrees, Angle("chord") - Angle("path"), 0.08);
        Assert.Equal(c.Aeroplane.Wing.Incidence.Degrees, Angle("chord") - Angle("level-line"), 0.08);
        // The arc of the angle of attack reaches from the path to the chord line.
        double[] arc = Drawn.Points(svg, "alpha")[0], pivot = Drawn.Points(svg, "chord")[0];
        Assert.Equal(Angle("path"), Drawn.Rise([pivot[0], pivot[1], arc[0], arc[1]]), 0.1);
        Assert.Equal(Angle("chord"), Drawn.Rise([pivot[0], pivot[1], arc[^2], arc[^1]]), 0.1);
        // The flap is some seven pixels long, so its angle is read to a degree.
        double[] flap = Drawn.Points(svg, "flap")[0];
        double hinge = Drawn.Rise([flap[2], flap[3], flap[0], flap[1]]);
        Assert.Equal(c.Flaps.Deflection.Degrees, hinge - Angle("chord"), 1.2);
    }

    [Theory]
    [MemberData(nameof(Drawn.EachConfiguration), MemberType = typeof(Drawn))]
    public void Forces_ReadBack_AreAsLongAsTheModelsForces(int which)
    {
        Configuration c = Drawn.Configurations.ElementAt(which);
        LandedView landed = Drawn.Landed("landing", c);
        LandingPoint flare = landed.Result.Trajectory.First(p => p.Stage == LandingStage.HoldOff);
        SteadyFlight final = Drawn.Final(c), glide = c.GlideIdling(c.ReferenceSpeed(Drawn.Air))!;
        ForcesAtAMoment[] moments =
        [
            ForcesAtAMoment.Of("final", final), ForcesAtAMoment.Of("idle glide", glide),
            ForcesAtAMoment.Of("round-out", c, Drawn.Air, flare),
        ];
        string svg = Charts.Pictures.Forces("Forces", moments).ToSvg();
        double weight = c.Mass.Kilograms * 9.80665;
        for (int i = 0; i < moments.Length; i++)
        {
            double[] Arrow(string part) => [.. Drawn.Points(svg, part)[i].Take(4)];
            double scale = Drawn.LengthOf(Arrow("weight")) / weight;
            Assert.Equal(50, Drawn.LengthOf(Arrow("weight")), 0.1);
            Assert.Equal(-90, Drawn.Rise(Arrow("weight")), 0.1);
            Assert.Equal(moments[i].Lift.Newtons * scale, Drawn.LengthOf(Arrow("lift")), 0.2);
            Assert.Equal(4 * moments[i].Drag.Newtons * scale, Drawn.LengthOf(Arrow("drag")), 0.2);
            Assert.Equal(4 * Math.Abs(moments[i].Thrust.Newtons) * scale, Drawn.LengthOf(Arrow("thrust")), 0.2);
            Assert.Equal(90 + moments[i].PathAngle.Degrees, Drawn.Rise(Arrow("lift")), 0.2);
        }
        // Across and along the path the steady flights are in balance; at the round-out's beginning lift exceeds what
        // balances.
        foreach (ForcesAtAMoment steady in moments.Take(2))
        {
            Assert.Equal(weight * Math.Cos(steady.PathAngle.Radians), steady.Lift.Newtons, weight * 1e-6);
            Assert.Equal(
                weight * Math.Sin(steady.PathAngle.Radians), (steady.Thrust - steady.Drag).Newtons, weight * 1e-6);
        }
        Assert.True(moments[2].Lift.Newtons > 1.02 * weight);
        Assert.Equal(
            flare.LiftCoefficient * 0.5 * Drawn.Air.Density.KilogramsPerCubicMeter
                * Math.Pow(flare.Airspeed.MetersPerSecond, 2) * c.Aeroplane.Wing.Area.SquareMeters,
                moments[2].Lift.Newtons, 0.5);
    }

    [Fact]
    public void Forces_OnTheGround_AreRefused()
    {
        Configuration up = Drawn.Flaps(0).Up;
        LandingPoint rolling = Drawn.Landed("landing", up).Result.Trajectory[^1];
        Assert.Contains(
            "on the ground",
            Assert.Throws<RefusedInputException>(() => ForcesAtAMoment.Of("stop", up, Drawn.Air, rolling)).Message,
            StringComparison.Ordinal);
    }
}
