using UnitsNet;

namespace FlapAero.Charts.Tests.Pictures;

public class LandedPictureTests
{
    [Theory]
    [MemberData(nameof(Drawn.EachAeroplane), MemberType = typeof(Drawn))]
    public void RoundOut_ReadBack_HasTheTrajectorysHeightsAttitudesAndClearances(int which)
    {
        (Configuration up, Configuration full) = Drawn.Flaps(which);
        LandedView[] landings = [Drawn.Landed("flaps up", up), Drawn.Landed("full flap", full)];
        string svg = Charts.Pictures.RoundOut("Round-out", landings).ToSvg();
        double[][] clearances = Drawn.Points(svg, "tail-clearance"), surfaces = Drawn.Points(svg, "surface"),
        tails = Drawn.Points(svg, "tailplane");
        Assert.Equal(6, clearances.Length);
        double scale = 0;
        for (int i = 0; i < 6; i++)
        {
            LandedView landing = landings[i / 3];
            LandingPoint[] air =
                [.. landing.Result.Trajectory.Where(p => p.Stage is LandingStage.HoldOff or LandingStage.Settling)];
            LandingPoint at = i % 3 == 0 ? air[0] : i % 3 == 2 ? air[^1]
                : air.MinBy(p => Math.Abs(p.Time.Seconds - (air[0].Time + air[^1].Time).Seconds / 2))!;
            double path = -Math.Asin(at.SinkRate / at.Airspeed) * 180 / Math.PI;
            double pitch =
                path + landing.Configuration.Flaps.Lift.AngleOfAttack(at.LiftCoefficient).Degrees
                    - landing.Configuration.Aeroplane.Wing.Incidence.Degrees;
            // The tail's lowest point is 4.9 m behind the wheels and touches 1.5° above the limit in the file.
            double below =
                Math.Tan((landing.Configuration.Aeroplane.TailLimitAttitude!.Value.Degrees + 1.5) * Math.PI / 180)
                    * 4.9;
            double radians = pitch * Math.PI / 180,
                clearance = at.Height.Meters - 4.9 * Math.Sin(radians) + below * Math.Cos(radians);
            if (i == 0) scale = Drawn.LengthOf(clearances[0]) / clearance;
            Assert.Equal(scale * clearance, Drawn.LengthOf(clearances[i]), 0.25);
            Assert.Equal(surfaces[i][1], clearances[i][3], 0.11);
            // The tailplane is drawn 2.5° nose up against the level line, some twelve pixels long.
            double tailplane = Drawn.Rise([tails[i][2], tails[i][3], tails[i][0], tails[i][1]]);
            Assert.Equal(pitch, tailplane - Math.Atan2(0.04, 0.9) * 180 / Math.PI, 0.6);
            Assert.True(clearance > 0);
        }
        Assert.True(
            Drawn.LengthOf(clearances[2]) < Drawn.LengthOf(clearances[5]),
            "flaps up the tail comes nearer to the runway");
    }

    [Theory]
    [MemberData(nameof(Drawn.EachAeroplane), MemberType = typeof(Drawn))]
    public void Runway_ReadBack_HasTheLandingsDistancesToScale(int which)
    {
        (Configuration up, Configuration full) = Drawn.Flaps(which);
        LandedView[] landings = [Drawn.Landed("flaps up", up), Drawn.Landed("full flap", full)];
        string svg = Charts.Pictures.RunwayFromAbove("Runway", Quillmere.Runway24, landings).ToSvg();
        double[] runway = Drawn.Points(svg, "runway")[0];
        double threshold = runway[0], scale = (runway[2] - runway[0]) / 780;
        double Meters(double x) => (x - threshold) / scale;
        for (int i = 0; i < 2; i++)
        {
            LandingResult result = landings[i].Result;
            Assert.Equal(result.TouchdownDistance.Meters, Meters(Drawn.Points(svg, "roll-nose-up")[i][0]), 0.4);
            Assert.Equal(result.NoseLowerDistance.Meters, Meters(Drawn.Points(svg, "roll-braked")[i][0]), 0.4);
            Assert.Equal(result.StopDistance.Meters, Meters(Drawn.Points(svg, "roll-braked")[i][2]), 0.4);
        }
        Assert.Equal(260, Meters(Drawn.Points(svg, "first-third")[0][0]), 0.4);
    }

    [Fact]
    public void Circuit_ReadBack_IsToScaleAndTurnsWhereTheCircuitDoes()
    {
        Runway runway = Quillmere.Runway24;
        Circuit circuit = Drawn.Circuit(Quillmere.Saturday.Wind.Mean);
        string svg = Charts.Pictures.CircuitFromAbove("Circuit", runway, ("flaps up", circuit)).ToSvg();
        double[] strip = Drawn.Points(svg, "runway")[0], wind = Drawn.Points(svg, "wind")[0];
        double scale = (strip[2] - strip[0]) / 780, centre = (strip[1] + strip[5]) / 2;
        double[][] rings = Drawn.Points(svg, "turn-begins");
        foreach ((CircuitLeg turn, double[] ring) in new[] { circuit.TurnToBase, circuit.TurnToFinal }.Zip(rings))
        {
            Assert.Equal(turn.Begin.X.Meters, (ring[0] - 4.5 - strip[0]) / scale, 6.0);
            Assert.Equal(turn.Begin.Y.Meters, (ring[1] - centre) / scale, 6.0);
        }
        // Saturday's wind, from 300°, crosses runway 24 from the right and a little ahead: it goes left of the
        // landing and back.
        Assert.True(wind[2] < wind[0] && wind[3] < wind[1]);
    }

    [Theory]
    [MemberData(nameof(Drawn.EachAeroplane), MemberType = typeof(Drawn))]
    public void Final_ReadBack_HasThePathAndTheDescentsThreeTimesAsTall(int which)
    {
        Configuration up = Drawn.Flaps(which).Up;
        Length away = Length.FromFeet(1000), over = Length.FromFeet(50),
        high = over + away * Math.Tan(Drawn.Path.Radians) + Length.FromFeet(100);
        IReadOnlyList<DescentPoint> down = Drawn.Down(up, 100);
        string svg = Charts.Pictures.FinalFromTheSide("Final", Drawn.Path, ("too high", up, down)).ToSvg();
        double[] descent = Drawn.Points(svg, "descent")[0], path = Drawn.Points(svg, "path-meant")[0],
        surface = Drawn.Points(svg, "surface")[0];
        double scale = (descent[^2] - descent[0]) / away.Meters;
        Assert.Equal(high.Meters, (surface[1] - descent[1]) / (3 * scale), 0.4);
        Assert.Equal(over.Meters, (surface[1] - descent[^1]) / (3 * scale), 0.4);
        Assert.Equal(Math.Tan(Drawn.Path.Radians), (path[3] - path[1]) / (path[2] - path[0]) / 3, 0.001);
        // The path, carried on, meets the runway where the usual pilot aims.
        Assert.Equal(over.Meters / Math.Tan(Drawn.Path.Radians), (path[2] - surface[2]) / scale, 1.0);
        Assert.Throws<RefusedInputException>(
            () => Charts.Pictures.FinalFromTheSide("Final", Drawn.Path, ("none", up, [])));
        Assert.Throws<RefusedInputException>(
            () => Charts.Pictures.FinalFromTheSide("Final", Angle.Zero, ("too high", up, down)));
    }
}
