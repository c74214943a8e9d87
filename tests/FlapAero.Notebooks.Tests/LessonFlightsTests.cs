using UnitsNet;

namespace FlapAero.Notebooks.Tests;

/// <summary>What lessons ask again and again, against the model asked without it.</summary>
public sealed class LessonFlightsTests
{
    private static readonly Aeroplane Aeroplane = DemoAeroplanes.TrainerH4;

    private static readonly Air Air = Air.StandardSeaLevel;

    [Fact]
    public void AtEachFlapSetting_Aeroplane_GoesFromUpToFullAtMaximumMass()
    {
        IReadOnlyList<Configuration> all = Aeroplane.AtEachFlapSetting();

        Assert.Equal(Aeroplane.FlapSettings, all.Select(c => c.Flaps));
        Assert.All(all, c => Assert.Equal(Aeroplane.MaximumMass.Kilograms, c.Mass.Kilograms, 9));
        Assert.Equal((Aeroplane.FlapsUp, Aeroplane.FullFlaps), (Aeroplane.WithFlapsUp().Flaps, Aeroplane.WithFullFlap().Flaps));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(5, 5)]
    public void Land_FasterBy_CrossesTheThresholdThatMuchFaster(double knots, double expected)
    {
        Configuration up = Aeroplane.WithFlapsUp();

        double crossed = up.Land(Air, Speed.FromKnots(knots)).Trajectory[0].Airspeed.Knots;

        Assert.Equal(up.ReferenceSpeed(Air).True.Knots + expected, crossed, 6);
    }

    // By hand as in the model's own test: twice the sink, and half its square over a tenth of g.
    [Fact]
    public void GoAroundFromIdle_FlapsUp_LosesWhatTheSinkSays()
    {
        GoAround around = Aeroplane.WithFlapsUp().GoAroundFromIdle(Air);
        double sink = around.Descent.SinkRate.MetersPerSecond;

        Assert.Equal(2 * sink + (sink * sink / (0.2 * 9.80665)), around.HeightLost!.Value.Meters, 1e-6);
        Assert.Contains("climbs at", around.ClimbOrSink().ToString(), StringComparison.Ordinal);
        Assert.Contains("sinks at", Aeroplane.WithFullFlap().GoAroundFromIdle(CorrectionDrills.HotAndHigh).ClimbOrSink().ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Climbing_AeroplaneWithoutFullThrottle_IsTheDemoTrainer()
    {
        Aeroplane l2 = DemoAeroplanes.TrainerL2;
        Aeroplane without = new(l2.Name, l2.Description, l2.Wing, l2.MinimumMass, l2.MaximumMass, l2.Propeller, l2.Engine, l2.FlapSettings);

        Assert.Same(without, Lesson.Begin(aeroplane: without).Aeroplane);
        Assert.Equal(DemoAeroplanes.TrainerH4.Name, Lesson.Begin(aeroplane: without).Climbing().Name);
        Assert.Same(l2, Lesson.Begin(aeroplane: l2).Climbing());
    }

    [Fact]
    public void SlipBesideFlap_Glides_AddsTheBandAndKeepsTheStall()
    {
        (Configuration up, Configuration full) = (Aeroplane.WithFlapsUp(), Aeroplane.WithFullFlap());
        SteadyFlight glideUp = up.ThrottleClosed(up.ReferenceSpeed(Air)), glideFull = full.ThrottleClosed(full.ReferenceSpeed(Air));
        string table = Lesson.Begin(aeroplane: Aeroplane).SlipBesideFlap(glideUp, glideFull, Angle.FromDegrees(15)).ToString();
        (Angle least, Angle most) = ForwardSlip.Steepens(glideUp, Angle.FromDegrees(15));

        Assert.Contains($"{(glideUp.GlideAngle + least).Degrees:0.0}°", table, StringComparison.Ordinal);
        Assert.Contains($"{(glideUp.GlideAngle + most).Degrees:0.0}°", table, StringComparison.Ordinal);
        Assert.Contains($"{glideFull.GlideAngle.Degrees:0.0}°", table, StringComparison.Ordinal);
    }

    [Fact]
    public void EngineSpeed_PathSteeperThanTheClosedThrottle_IsTheIdlingPropellers()
    {
        Configuration up = Aeroplane.WithFlapsUp();
        Airspeed speed = up.ReferenceSpeed(Air);
        Angle closed = up.ThrottleClosed(speed).GlideAngle;

        double steep = up.EngineSpeed(speed, closed + Angle.FromDegrees(2)).RevolutionsPerMinute;

        Assert.Equal(Aeroplane.Propeller!.Idling(speed, Aeroplane.Engine!)!.EngineSpeed.RevolutionsPerMinute, steep, 6);
        Assert.True(up.EngineSpeed(speed, Angle.FromDegrees(1)).RevolutionsPerMinute > steep);
    }

    [Fact]
    public void FlownFinal_OnPath_InheritsNothingAndTouchesWhereTheUsualLandingDoes()
    {
        Configuration up = Aeroplane.WithFlapsUp();

        FlownFinal meant = FlownFinal.Of(up, Air, Length.FromFeet(1000), Length.Zero);
        FlownFinal high = FlownFinal.Of(up, Air, Length.FromFeet(1000), Length.FromFeet(100));

        Assert.Equal(0, meant.Inherited.Knots, 6);
        Assert.Equal(up.Land(Air).TouchdownDistance.Feet, meant.Landing.TouchdownDistance.Feet, 3);
        Assert.True(high.Inherited.Knots > 5);
        Assert.Equal(high.Landing.TouchdownDistance.Feet - meant.Landing.TouchdownDistance.Feet, high.Further.Feet, 6);
    }

    [Theory]
    [InlineData(0, "No wind")]
    [InlineData(10, "10 kt on the nose")]
    [InlineData(-10, "10 kt from behind")]
    public void Blows_Wind_SaysWhereFrom(double ahead, string words) =>
        Assert.Equal(words, LandingWords.Blows(ahead).ToString().Replace('\u00a0', ' '));

    [Theory]
    [InlineData(200, "200 ft before its end", "200 ft to spare", "has 200 ft to spare")]
    [InlineData(-200, "200 ft past its end", "200 ft short", "is 200 ft too short")]
    public void Spare_RunwayLeft_SaysWhichWay(double feet, string spare, string stands, string room)
    {
        var left = Length.FromFeet(feet);

        Assert.Equal(
            new[] { spare, stands, room },
            new[] { LandingWords.Spare(left), LandingWords.Stands(left), LandingWords.Room(left) }.Select(w => w.ToString().Replace('\u00a0', ' ')));
    }

    /// <summary>A value in prose is no markup in a notebook's cell either; in maths it stands as TeX.</summary>
    [Fact]
    public void Kept_ProseWithValues_IsMarkdownInWhichNoValueIsMarkup() =>
        Assert.Equal(
            "**Name** a\\*b\\_c, $x = 1.50$, \\$5",
            Lesson.Begin().Say($"**Name** {"a*b_c"}, $x = {1.5}$, {"$5"}").Kept().Markdown);
}
