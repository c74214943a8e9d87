using FlapAero.Equations;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace FlapAero.Published.Tests.Landings;

/// <summary>
/// The textbooks' worked landings by our own solver, where its stages can be brought to coincide with their simplifications.
/// Their own formulas are evaluated with their rows.
/// </summary>
public sealed class WorkedLandingTests
{
    private static readonly double Path = Angle.FromDegrees(3).Radians;
    private static readonly double FlareSpeed = Feet(PublishedRows.Get("T08-024").Numbers[0].Value);
    private static readonly double FlareHeight = Feet(PublishedRows.Input("T08-026"));

    // The sink on a straight path over the ground in still air.
    private static double Sink => FlareSpeed * Math.Sin(Path);

    // Lift dumped: no C_L on the wheels, one friction from the touchdown on, an engine that gives nothing.
    private static LandingInput LiftDumped => new()
    {
        Mass = BusinessJet.Weight / StandardConstants.Gravity,
        WingArea = BusinessJet.Area,
        Span = BusinessJet.Span,
        WingHeight = 1.83,
        ZeroLiftDrag = BusinessJet.ZeroLiftDrag,
        Oswald = 0.81,
        MaximumLift = BusinessJet.MaximumLift,
        Density = 1.225,
        ThresholdHeight = LandingPilot.Usual.ThresholdHeight.Meters,
        ThresholdSpeed = 1.5 * StallLaws.Speed(BusinessJet.Weight, 1, 1.225, BusinessJet.Area, BusinessJet.MaximumLift),
        PathAngleDegrees = 3,
        FlareTimeConstant = 1.5,
        HoldOffHeight = 0.3,
        TouchdownLiftFraction = 0.6,
        PowerCutHeight = LandingPilot.Usual.ThresholdHeight.Meters,
        PowerCutTime = 3,
        NoseLowerSpeedFraction = 0.9,
        RollingFriction = BusinessJet.BrakingFriction,
        BrakingFriction = BusinessJet.BrakingFriction,
    };

    private static double Feet(double feet) => Length.FromFeet(feet).Meters;

    // The bracket at 0.7 of the touchdown speed is the mean of a force that grows with V²: what is left out is of the second
    // order in drag over friction, which is 4 % at the touchdown.
    [Fact]
    public void Roll_LiftDumpedAtTheTextbooksTouchdownSpeed_IsTheTextbooks()
    {
        IReadOnlyList<PrintedNumber> printed = PublishedRows.Get("T08-020").Numbers;
        double fraction = Brent.FindRoot(
            share => new WholeLanding(LiftDumped with { TouchdownLiftFraction = share }).TouchdownSpeed - printed[0].Value, 0.55, 0.65, 1e-9);
        WholeLanding landing = new(LiftDumped with { TouchdownLiftFraction = fraction });
        Assert.Equal(printed[1].Value, landing.Roll, 0.005 * printed[1].Value);
        double drag = AirspeedLaws.DynamicPressure(1.225, 0.7 * landing.TouchdownSpeed) * BusinessJet.Area * BusinessJet.ZeroLiftDrag;
        double byHand = WorkedFormulas.GroundRoll(
            landing.TouchdownSpeed, landing.Weight, drag, BusinessJet.BrakingFriction, StandardConstants.Gravity);
        // The touchdown sink is in our speed along the path and not in the roll.
        Assert.Equal(byHand, landing.Roll, 1e-3 * byHand);
    }

    // Power kept on, the path is straight and the speed all but constant: only the ground takes some of the drag away.
    [Fact]
    public void Approach_PowerKeptToTheTextbooksFlareHeight_IsAsLongAsTheTextbooks()
    {
        const double HoldOff = 0.3;
        WholeLanding landing = new(LiftDumped with
        {
            ThresholdSpeed = FlareSpeed,
            HoldOffHeight = HoldOff,
            FlareTimeConstant = (FlareHeight - HoldOff) / Sink,
            PowerCutHeight = HoldOff,
            TouchdownLiftFraction = 0.75,
        });
        double printed = Feet(PublishedRows.Input("T08-027"));
        Assert.Equal(FlareHeight, landing.Outcome.FlareHeight, 1e-6);
        Assert.Equal(printed, landing.Outcome.FlareStartDistance, 2e-3 * printed);
    }

    // An arc of constant load factor and a sink that dies away, from the same height and sink: h = s²/(2(n − 1)g) against
    // (n − 1) g = s/τ at the start with h = s τ, so ours begins with twice the pull, and its time constant is half the arc's time.
    [Fact]
    public void RoundOut_FromTheTextbooksFlareHeight_PullsTwiceTheArcsAtItsStart()
    {
        double timeConstant = FlareHeight / Sink;
        double ours = 1 + Sink / (StandardConstants.Gravity * timeConstant);
        double arcs = PublishedRows.Input("T08-030");
        Assert.Equal(2 * (arcs - 1), ours - 1, 5e-3);
        double arcTime = Feet(PublishedRows.Input("T08-028")) / FlareSpeed;
        Assert.Equal(2 * timeConstant, arcTime, 5e-3 * arcTime);
        // After the arc's time the arc has arrived; an eighth of our sink and height is left, and the float begins.
        Assert.Equal(0.135, Math.Exp(-arcTime / timeConstant), 2e-3);
    }

    [Theory, MemberData(nameof(HandbookRuleTests.Names), MemberType = typeof(HandbookRuleTests))]
    public void RoundOut_Demo_PullsLessThanTheStipulatedLoad(string name)
    {
        WholeLanding landing = RuleLandings.Named(name).Canonical;
        double sink = (landing.Outcome.FlareHeight - landing.Input.HoldOffHeight) / landing.Input.FlareTimeConstant;
        double load = 1 + sink / (StandardConstants.Gravity * landing.Input.FlareTimeConstant);
        Assert.InRange(load, 1.1, PublishedRows.Input("T08-030"));
    }

    // One to three seconds of free roll, where a fast aeroplane's brakes wait for the nose. The demo holds its nose off longer.
    [Theory]
    [InlineData("H4, full flaps", 3.8)]
    [InlineData("H4, flaps up", 6.6)]
    [InlineData("L2, full flaps", 4.7)]
    [InlineData("L2, flaps up", 7.9)]
    public void FreeRoll_Demo_LastsLongerThanTheTextbooks(string name, double seconds)
    {
        WholeLanding landing = RuleLandings.Named(name).Canonical;
        Assert.Equal("1 to 3", PublishedRows.Get("T08-029").Value);
        double free = landing.Outcome.NoseLowerTime - landing.Outcome.TouchdownTime;
        Assert.Equal(seconds, free, 0.1);
        Assert.True(free > 3);
    }

    [Fact]
    public void LiftOff_TakeOffExample_FollowsItsFormula() => Assert.True(PublishedRows.Get("T08-022").Numbers[0].Agrees(
        WorkedFormulas.LiftOffDistance(
            88176.75, BusinessJet.Area, BusinessJet.Span * BusinessJet.Span / BusinessJet.Area, 1, 1, 0.02, 0.81,
            PublishedRows.Input("T04-017"), 32485, 0.02, 1.225, 9.8)));

    [Fact]
    public void Hydroplaning_TyreOfTheExample_FollowsItsFormula() =>
        Assert.True(PublishedRows.Get("T03-022").Numbers[0].Agrees(9 * Math.Sqrt(36)));
}
