using UnitsNet;
using static FlapAero.Tests.Circuits.Plans;

namespace FlapAero.Tests.Circuits;

public sealed class RefusalTests
{
    private static readonly CircuitPlan Demo = DemoCircuits.FlapsUp;

    [Fact]
    public void Spacing_NarrowerThanTheTurns_HasNoRoomForTwo()
    {
        CircuitRefusal refusal = Refused(Plain(spacing: 800), "no-room-for-two-turns");
        double radius = Turn.Radius(Knots(75), Degrees(20), Circuit.Backwards(Plain()).Value.TurnToBase.PathAngle).Meters;
        Assert.Equal(2 * radius, refusal.Values[0].Value.As(UnitsNet.Units.LengthUnit.Meter), 1e-6);
        Assert.Contains("spacing 800 m", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Final_SteeperThanTheIdleGlide_IsOutsideTheThrust()
    {
        CircuitRefusal refusal = Refused(
            Demo.With(legs: WithFinal(Demo.Legs, new(H4(0), Knots(70), Degrees(7)))), "thrust-outside-idle-to-full");
        Assert.Equal(LegName.Final, refusal.Leg);
        Assert.True(refusal.Values[0].Value.As(UnitsNet.Units.ForceUnit.Newton) < -200);
        Assert.Contains("idle -200 N, full 2600 N", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Downwind_LevelTakesMoreThanFull_IsOutsideTheThrust() => Assert.Equal(
        LegName.DownwindLevel,
        Refused(Demo.With(thrust: new(Force.FromNewtons(-200), Force.FromNewtons(900))), "thrust-outside-idle-to-full").Leg);

    [Fact]
    public void RollOut_BelowThreeHundredFeet_IsEstablishedTooLow()
    {
        CircuitRefusal refusal = Refused(Demo.With(fix: CircuitFix.RollOutAt(Length.FromFeet(299))), "established-too-low");
        Assert.Equal(299, refusal.Values[0].Value.As(UnitsNet.Units.LengthUnit.Foot), 1e-6);
        Assert.True(Circuit.Backwards(Demo.With(fix: CircuitFix.RollOutAt(Length.FromFeet(300)))).Happened);
    }

    [Fact]
    public void Wind_AcrossFinalFasterThanTheAeroplane_LetsNoCrabHoldTheTrack() =>
        Refused(Demo.With(wind: WindOf(180, 75)), "no-crab-holds-the-track");

    [Fact]
    public void Wind_AgainstBaseAsFastAsTheAeroplane_LetsNoCrabHoldTheTrack() => Assert.Equal(
        LegName.Final, Refused(Demo.With(wind: WindOf(90, 71)), "no-crab-holds-the-track").Leg);

    [Fact]
    public void Turn_SteeperThanTheLimit_ExceedsIt()
    {
        CircuitRefusal refusal = Refused(Demo.With(bankLimit: Degrees(19)), "bank-limit-exceeded");
        Assert.Equal("turn to base: the turn is planned steeper than the limit (bank 20°, limit 19°). Bank less, or set a higher limit.", refusal.Message.Replace(" °", "°", StringComparison.Ordinal));
        Assert.True(Circuit.Backwards(Demo.With(bankLimit: Degrees(20))).Happened);
    }

    // At 65 kt the margin over 53.3 kt is 22 %: gone at n = 1.49, 47.8° of bank.
    [Theory]
    [InlineData(47, true)]
    [InlineData(49, false)]
    public void Turn_PastTheStallingBank_IsStalled(double bank, bool flies)
    {
        TurnLeg turn = new(H4(0), Knots(65), Descent.Level, Degrees(bank));
        CircuitPlan plan = Demo.With(
            legs: WithTurnToFinal(Demo.Legs, turn), bankLimit: Degrees(60), spacing: Length.FromMeters(1700));
        if (flies) Assert.InRange(Solve(plan).TurnToFinal.StallMargin, 0, 0.02);
        else Assert.Equal(LegName.TurnToFinal, Refused(plan, "stalled").Leg);
    }

    [Fact]
    public void Final_SlowerThanTheStall_IsStalled() =>
        Refused(Demo.With(legs: WithFinal(Demo.Legs, new(H4(0), Knots(52), Degrees(3)))), "stalled");

    [Fact]
    public void CircuitHeight_LessThanTheLegsLose_IsTooLow() =>
        Refused(Demo.With(height: Length.FromFeet(600)), "circuit-height-too-low");

    [Fact]
    public void Turn_WithThrustToClimb_DoesNotDescend()
    {
        TurnLeg turn = new(H4(0), Knots(75), Descent.AtThrust(Force.FromNewtons(2000)), Degrees(20));
        Refused(Demo.With(legs: WithTurnToFinal(Demo.Legs, turn)), "leg-does-not-descend");
    }

    [Fact]
    public void Downwind_HardlySinking_DoesNotDescend()
    {
        StraightLeg hardly = new(H4(0), Knots(85), Descent.AtSinkRate(Speed.FromFeetPerMinute(9)));
        Refused(Demo.With(legs: WithDownwind(Demo.Legs, hardly)), "leg-does-not-descend");
    }

    [Fact]
    public void Leg_BrakedLikeAStone_HasNoSteadyPath()
    {
        StraightLeg dive = new(H4(0), Knots(85), Descent.AtThrust(Force.FromNewtons(-9000)));
        Refused(Demo.With(legs: WithDownwind(Demo.Legs, dive)), "no-steady-path");
    }

    [Fact]
    public void AngleBehindTheWing_BeyondTheTailWithTheCrab_IsNeverReached() => Refused(
        Plain(fix: CircuitFix.BaseTurnAt(Degrees(80)), wind: WindOf(270, 30)), "never-that-far-behind-the-wing");

    [Fact]
    public void Refusal_EveryReason_HasACodeOfLowerCaseWords() => Assert.All(
        Enum.GetValues<CircuitRefusalReason>(),
        reason => Assert.Matches("^[a-z]+(-[a-z]+)+$|^stalled$", new CircuitRefusal(reason, null, "because").Code));

    [Fact]
    public void Outcome_Refused_ThrowsItsMessageOnlyWhenACircuitIsDemanded()
    {
        Outcome<Circuit, CircuitRefusal> outcome = Circuit.Backwards(Plain(spacing: 800));
        Assert.False(outcome.Happened);
        Assert.EndsWith(" Fly downwind further out, or bank more.", outcome.Explanation, StringComparison.Ordinal);
        Assert.Equal(outcome.Explanation, Assert.Throws<InvalidOperationException>(() => outcome.Value).Message);
    }

    [Fact]
    public void Arguments_ThatMakeNoSense_AreArgumentErrors()
    {
        Assert.Throws<RefusedInputException>(() => Demo.With(spacing: Length.FromMeters(49)));
        Assert.Throws<RefusedInputException>(() => Demo.With(height: Length.FromMeters(10)));
        Assert.Throws<RefusedInputException>(() => Demo.With(bankLimit: Degrees(90)));
        Assert.Throws<RefusedInputException>(() => Demo.With(hand: (CircuitHand)7));
        Assert.Throws<RefusedInputException>(() => Demo.With(establishedBy: Length.FromFeet(20)));
        Assert.Throws<RefusedInputException>(() => new ThrustRange(Force.FromNewtons(1), Force.Zero));
        Assert.Throws<RefusedInputException>(() => new FinalLeg(H4(3), Knots(86), Degrees(3)));
        Assert.Throws<RefusedInputException>(() => new FinalLeg(H4(0), Knots(70), Degrees(0)));
        Assert.Throws<RefusedInputException>(() => new TurnLeg(H4(0), Knots(70), Descent.Level, Degrees(0)));
        Assert.Throws<RefusedInputException>(() => Descent.AtSinkRate(Speed.Zero));
        Assert.Throws<RefusedInputException>(() => Plain(downwind: Descent.Level, fix: CircuitFix.PowerReducedAt(Length.Zero)));
        Aeroplane other = DemoAeroplanes.TrainerL2;
        Assert.Throws<RefusedInputException>(
            () => WithFinal(Demo.Legs, new(other.Configure(other.FlapsUp), Knots(70), Degrees(3))));
    }

    private static CircuitRefusal Refused(CircuitPlan plan, string code)
    {
        CircuitRefusal refusal = Assert.IsType<CircuitRefusal>(Circuit.Backwards(plan).Refusal);
        Assert.Equal(code, refusal.Code);
        Assert.NotEmpty(refusal.Values);
        return refusal;
    }
}
