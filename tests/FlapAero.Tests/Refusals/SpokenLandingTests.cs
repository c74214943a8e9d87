using UnitsNet;
using UnitsNet.Units;

namespace FlapAero.Tests.Refusals;

/// <summary>A landing made of quantities is refused and explained in the units that they were given in.</summary>
public sealed class SpokenLandingTests
{
    private static readonly LandingSetup Usual = UsualLanding.Setup;

    private static readonly Dictionary<string, (LandingSetup Setup, string Message)> Senseless = new()
    {
        ["mass"] = (
            Aeroplane(a => a with { Mass = Mass.FromPounds(-1) }),
            "mass: -1 lb is refused; allowed is a finite value above 0 lb. "),
        ["area"] = (
            Aeroplane(a => a with { WingArea = Area.FromSquareFeet(0) }),
            "wing area: 0 ft² is refused; allowed is a finite value above 0 ft². "),
        ["span"] = (Aeroplane(a => a with { Span = Length.FromFeet(-30) }), "span: -30 ft is refused; "),
        ["wing"] = (Aeroplane(a => a with { WingHeight = Length.FromInches(0) }), "wing height: 0 in is refused; "),
        ["lift"] = (
            Aeroplane(a => a with { MaximumLiftCoefficient = 0 }),
            "maximum lift coefficient: 0 is refused; allowed is a finite value above 0. "),
        ["drag"] = (
            Aeroplane(a => a with { ZeroLiftDragCoefficient = double.NaN }),
            "zero lift drag coefficient: NaN is refused; allowed is a finite value, 0 or more. "),
        ["height"] = (
            Technique(t => t with { ThresholdHeight = Length.FromFeet(-5) }),
            "threshold height: -5 ft is refused; allowed is a finite value above 0 ft. "),
        ["path"] = (
            Technique(t => t with { PathAngle = Angle.FromDegrees(90) }),
            "path angle: 90° is refused; allowed is above 0° and below 90°. "),
        ["radians"] = (
            Technique(t => t with { PathAngle = Angle.FromRadians(-0.1) }),
            "path angle: -0.1 rad is refused; allowed is above 0 rad and below 1.5708 rad. "),
        ["flare"] = (
            Technique(t => t with { FlareTimeConstant = Duration.FromMilliseconds(-1) }),
            "flare time constant: -1 ms is refused; "),
        ["cut"] = (
            Technique(t => t with { PowerCutTime = Duration.FromMinutes(-1) }),
            "power cut time: -1 min is refused; allowed is a finite value, 0 min or more. "),
        ["slow"] = (
            Technique(t => t with { ThresholdSpeed = Speed.FromKnots(4) }),
            "threshold speed: 4 kt is refused; allowed is more than the headwind, 5 kt. Against a faster wind the aeroplane flies backwards."),
        ["tailwind"] = (
            Technique(t => t with { PathAngle = Angle.FromDegrees(45) }, Speed.FromKilometersPerHour(-300)),
            "path angle: 45° is refused with headwind -300 km/h and threshold speed 62 kt; allowed is an angle at which the "
            + "airspeed can make the path over the ground. "),
        ["endless"] = (
            Technique(t => t with { ThresholdHeight = Length.FromNauticalMiles(1e308) }),
            "threshold height: more than 1e+300 NM is refused; "),
        ["collapsed"] = (
            Technique(t => t with { PowerCutHeight = Length.FromMeters(3), PowerCutTime = Duration.Zero }) with
            {
                Aeroplane = Usual.Aeroplane with
                {
                    Mass = Mass.FromPounds(2315),
                    MaximumLiftCoefficient = 1e6,
                    ZeroLiftDragCoefficient = 3,
                },
            },
            " cannot be computed (mass 2315 lb, wing area 16 m², density 1.225 kg/m³, threshold speed 62 kt): "),
    };

    public static TheoryData<string> Cases => [.. Senseless.Keys];

    [Theory, MemberData(nameof(Cases))]
    public void Fly_LandingWithoutSense_IsRefusedInTheCallersUnits(string which)
    {
        (LandingSetup setup, string message) = Senseless[which];
        Func<object>[] calls =
        [
            () => Landing.Fly(setup), () => Landing.ForceOn(setup, 0.5), () => setup.RoundingOutFrom(Length.FromMeters(5)),
            () => Landing.Fly(setup, LandingConditions.Canonical),
            () => LandingScatter.Around(setup, new LandingSpread()).Fly(10),
        ];
        // What cannot be computed is found where it is computed.
        foreach (Func<object> call in which == "collapsed" ? calls.Take(1) : calls)
        {
            var refusal = Assert.Throws<RefusedInputException>(call);
            Assert.Contains(message, refusal.Message, StringComparison.Ordinal);
            RefusalFields.Check(refusal);
        }
    }

    [Fact]
    public void Fly_SlowLanding_HasTheCallersQuantityInItsFields()
    {
        var refusal = Assert.Throws<RefusedInputException>(() => Landing.Fly(Senseless["slow"].Setup));
        Assert.Equal(("threshold speed", "4 kt", "more than the headwind, 5 kt"), (refusal.Quantity, refusal.Given, refusal.Allowed));
        Assert.Equal("ThresholdSpeed", refusal.ParamName);
        var given = Assert.IsType<Speed>(refusal.ActualValue);
        Assert.Equal((SpeedUnit.Knot, 4.0), (given.Unit, Math.Round(given.Knots, 9)));
    }

    [Fact]
    public void Fly_LandingThatCannotHappen_IsExplainedInTheCallersUnits()
    {
        Outcome<LandingResult, LandingRefusal> early = Landing.Fly(Usual.RoundingOutFrom(Length.FromFeet(60)));
        Assert.Contains("at a wheel height of 60 ft, and the threshold is crossed at 50 ft.", early.Explanation, StringComparison.Ordinal);
        LandingSetup steep = Aeroplane(a => a with { IdleThrust = Force.FromPoundsForce(400) });
        Assert.Matches("takes a thrust of -?[0-9.]+ lbf, and the idling engine gives 400 lbf:", Landing.Fly(steep).Explanation);
        LandingSetup light = Technique(t => t with { ThresholdSpeed = Speed.FromKilometersPerHour(115) });
        Assert.Equal(
            Landing.Fly(light).Explanation, Landing.Fly(light, LandingConditions.Canonical).Explanation);
    }

    [Fact]
    public void ForceOn_SpeedInKnots_IsToldInKnotsAndFeetPerMinute()
    {
        Assert.Matches(@"put on at [0-9.]+ kt with a sink of [0-9]+ ft/min\.", Landing.ForceOn(Usual, 0.6).Explanation);
        LandingSetup metric = Technique(t => t with { ThresholdSpeed = Speed.FromMetersPerSecond(32) });
        Assert.Matches(@"put on at [0-9.]+ m/s with a sink of [0-9.]+ m/s\.", Landing.ForceOn(metric, 0.6).Explanation);
    }

    [Fact]
    public void Scatter_DistributionThatReachesTooFar_IsRefusedInItsUnit()
    {
        void Refused(string message, LandingSpread spread)
        {
            var refusal = Assert.Throws<RefusedInputException>(
                () => LandingScatter.Around(Usual, spread));
            Assert.StartsWith(message, refusal.Message, StringComparison.Ordinal);
            RefusalFields.Check(refusal);
        }

        Refused(
            "threshold height: -10 ft is refused; allowed is a finite value above 0 ft. The landing begins above the runway. "
            + "The distribution reaches it: ",
            new() { ThresholdHeight = Distribution.Uniform(Length.FromFeet(-10), Length.FromFeet(60)) });
        Refused(
            "flare time constant: a Normal without edges is refused; allowed is a finite value above 0 ms. "
            + "The sink dies away over it. It reaches every number: truncate it.",
            new() { FlareTimeConstant = Distribution.Normal(Duration.FromMilliseconds(2000), Duration.FromMilliseconds(1)) });
        Refused(
            "threshold speed: 62 kt is refused; allowed is more than the headwind, 80 kt. ",
            new() { Headwind = Distribution.Uniform(Speed.FromKnots(0), Speed.FromKnots(80)) });
        Refused(
            "gust change: 61 kt is refused; allowed is -60 kt to 60 kt. ",
            new() { GustChange = Distribution.Fixed(Speed.FromKnots(61)) });
    }

    [Theory]
    [InlineData("maximum: 1 kt is refused; allowed is 2 kt or more. ")]
    public void Distribution_OutOfOrder_IsRefusedInItsUnit(string message) => Assert.StartsWith(
        message, Assert.Throws<RefusedInputException>(() => Distribution.Uniform(Speed.FromKnots(2), Speed.FromKnots(1))).Message,
        StringComparison.Ordinal);

    private static LandingSetup Aeroplane(Func<LandingAeroplane, LandingAeroplane> change) =>
        Usual with { Aeroplane = change(Usual.Aeroplane) };

    private static LandingSetup Technique(Func<LandingTechnique, LandingTechnique> change, Speed? headwind = null) => Usual with
    {
        Technique = change(Usual.Technique),
        Headwind = headwind ?? Usual.Headwind,
    };
}
