using UnitsNet;

namespace FlapAero.Charts.Tests.Pictures;

public class ViewOverTheNoseTests
{
    [Theory]
    [MemberData(nameof(Drawn.EachConfiguration), MemberType = typeof(Drawn))]
    public void Runway_FromOnAboveAndBelowThePath_StandsWhereAHandWorkedPerspectiveHasIt(int which)
    {
        Configuration c = Drawn.Configurations.ElementAt(which);
        PilotsView on = Drawn.See("on the path", c, feet: 2000);
        foreach (
            PilotsView view in (PilotsView[])[
                on, on.AbovePath("high", Length.FromFeet(40)), on.AbovePath("low", Length.FromFeet(-50))])
        {
            string svg = Charts.Pictures.ViewOverTheNose("View", Quillmere.Runway24, view).ToSvg();
            double[] corners = Assert.Single(Drawn.Points(svg, "runway"));
            double[] level = Drawn.Points(svg, "level-line")[0], frame = Drawn.Points(svg, "frame")[0];
            double middle = (frame[0] + frame[2]) / 2;
            // The drawing says its own scale: the cowling's edge is 8° below the level line.
            double cowling = Drawn.Points(svg, "cowling")[0].Where((_, i) => i % 2 == 1).Min();
            double focal = (cowling - level[1]) / Math.Tan(8 * Math.PI / 180);

            double far = 2000 * 0.3048 + 780, near = 2000 * 0.3048, eye = view.WheelHeight.Meters + 6 * 0.3048;
            double pitch = c.OnPath(c.ReferenceSpeed(Drawn.Air), -Drawn.Path).PitchAttitude.Radians;
            double[] expected =
                [.. new[] { (near, -11.5), (far, -11.5), (far, 11.5), (near, 11.5) }.SelectMany(corner =>
            {
                // In the upright plane the corner is r away, so many radians below the horizon, and that much and the
                // pitch below the nose.
                double r = Math.Sqrt(corner.Item1 * corner.Item1 + eye * eye),
                    belowNose = Math.Atan(eye / corner.Item1) + pitch;
                return new[] { middle + focal * corner.Item2 / (r * Math.Cos(belowNose)),
                    level[1] + focal * Math.Tan(belowNose) };
            })];
            Assert.Equal(8, corners.Length);
            for (int i = 0; i < 8; i++) Assert.Equal(expected[i], corners[i], 0.25);
        }
    }

    [Theory]
    [MemberData(nameof(Drawn.EachConfiguration), MemberType = typeof(Drawn))]
    public void HorizonAndPath_StandAtPitchAndAtAngleOfAttackLessIncidence(int which)
    {
        Configuration c = Drawn.Configurations.ElementAt(which);
        SteadyFlight flight = Drawn.Final(c);
        string svg = Charts.Pictures.ViewOverTheNose("View", Quillmere.Runway24, Drawn.See("one", c)).ToSvg();
        double level = Drawn.Points(svg, "level-line")[0][1], horizon = Drawn.Points(svg, "horizon")[0][1];
        double[] ring = Drawn.Points(svg, "path-point")[0];
        double path = (ring.Where((_, i) => i % 2 == 1).Min() + ring.Where((_, i) => i % 2 == 1).Max()) / 2;
        double focal = 888.3;
        Assert.Equal(flight.PitchAttitude.Degrees, Math.Atan((horizon - level) / focal) * 180 / Math.PI, 0.02);
        Assert.Equal(
            (flight.AngleOfAttack - c.Aeroplane.Wing.Incidence).Degrees,
            Math.Atan((path - level) / focal) * 180 / Math.PI, 0.02);
    }

    [Fact]
    public void Nose_FlapsUp_IsHigherAndTheRunwayNearerToTheCowling()
    {
        (Configuration up, Configuration full) = Drawn.Flaps(0);
        Picture picture =
            Charts.Pictures.ViewOverTheNose(
                "View", Quillmere.Runway24, Drawn.See("flaps up", up), Drawn.See("full flap", full));
        double[][] runway = Drawn.Points(picture.ToSvg(), "runway"), horizon = Drawn.Points(picture.ToSvg(), "horizon");
        Assert.True(horizon[0][1] > horizon[1][1]);
        Assert.True(runway[0][3] > runway[1][3]);
        // The eye crosses the threshold 56 ft up, and 56/tan 3.5° is 916.
        Assert.Contains("916\u00A0ft past the threshold", picture.FindingText, StringComparison.Ordinal);
        Assert.Contains("Flaps up: nose +2.3°", picture.FindingText, StringComparison.Ordinal);
    }

    [Fact]
    public void View_ThatCannotBe_IsRefusedWithItsValue()
    {
        Configuration up = Drawn.Flaps(0).Up;
        PilotsView view = Drawn.See("view", up);
        Assert.Contains(
            "−88.8",
            Assert.Throws<RefusedInputException>(() => view.AbovePath("low", Length.FromFeet(-200))).Message,
            StringComparison.Ordinal);
        Assert.Contains(
            "before the threshold",
            Assert.Throws<RefusedInputException>(() => Drawn.See("view", up, feet: -1)).Message,
            StringComparison.Ordinal);
        Assert.Contains("1° to 12°", Assert.Throws<RefusedInputException>(
            () => PilotsView.OnPath("view", up, up.ReferenceSpeed(Drawn.Air), Angle.Zero, Length.Zero)).Message,
                StringComparison.Ordinal);
        Assert.Throws<RefusedInputException>(() => Charts.Pictures.ViewOverTheNose("View", Quillmere.Runway24));
        Assert.Throws<RefusedInputException>(
            () => Charts.Pictures.ViewOverTheNose("View", Quillmere.Runway24, view, view, view, view));
    }
}
