using System.Reflection;
using UnitsNet;

namespace FlapAero.Tests.Refusals;

/// <summary>One of everything that the library's members take, of no use but to be called with.</summary>
internal static class Samples
{
    private static readonly Air SeaLevel = Air.StandardSeaLevel;
    private static readonly Configuration FlapsUp = DemoAeroplanes.TrainerH4.Configure(DemoAeroplanes.TrainerH4.FlapsUp);
    private static readonly Airspeed Approach = Airspeed.FromCalibrated(Speed.FromKnots(70), SeaLevel);
    private static readonly LandingSpread Spread = new();

    private static readonly IQuantity[] Usual =
    [
        Speed.FromKnots(70), Length.FromMeters(10), Mass.FromKilograms(1000), Angle.FromDegrees(3), Force.FromNewtons(100),
        Pressure.FromHectopascals(1013), Temperature.FromDegreesCelsius(15), Duration.FromSeconds(3), ElectricPotential.FromVolts(12),
        RotationalSpeed.FromRevolutionsPerMinute(1800),
    ];

    private static readonly object[] Known =
    [
        "any", SeaLevel, FlapsUp, Approach, FlapsUp.Aeroplane, FlapsUp.Flaps, FlapsUp.Flaps.Lift, FlapsUp.Flaps.Drag,
        FlapsUp.Flaps.Calibration, FlapsUp.Aeroplane.Wing, FlapsUp.Aeroplane.Propeller,
        FlapsUp.Aeroplane.Propeller.Table, FlapsUp.Aeroplane.Engine, FlapsUp.Glide(Approach), UsualLanding.Setup,
        UsualLanding.Setup.Aeroplane, new[] { UsualLanding.Setup }, LandingConditions.Canonical, new[] { LandingConditions.Canonical }, LandingScatter.Around(UsualLanding.Setup, Spread),
        Spread, LandingScatter.Around(UsualLanding.Setup, Spread).Fly(10),
        LandingScatter.Around(UsualLanding.Setup, Spread).Fly(10).StopDistance,
        LandingScatter.Around(UsualLanding.Setup, Spread).Fly(10).Landed, Distribution.Normal(Speed.Zero, Speed.FromKnots(1)),
        new Wind(Angle.Zero, Speed.FromKnots(5)), WindProfile.PowerLaw(Speed.FromKnots(10), 0.2),
        new OneCosineGust(Speed.FromKnots(5), Duration.Zero, Duration.FromSeconds(3)),
        IdleThrust.FromConfiguration(FlapsUp, SeaLevel), LandingPilot.Usual, GoAround.From(FlapsUp.OnPath(Approach, Angle.FromDegrees(-3))).Value,
        Landing.Fly(UsualLanding.Setup).Value, RunwaySurface.DryPaved, DemoBriefings.Flight.Wind,
        DemoBriefings.Flight.Runway, DemoBriefings.Flight.Margin, BriefingRules.Usual, Flown, Flown.Plan, Flown.Base, Flown.Plan.Legs,
        Flown.Plan.Legs.Downwind, Flown.Plan.Legs.Downwind.Descent, Flown.Plan.Wind,
        Flown.Plan.Thrust, new FlapGeometry(FlapKind.Plain, 0.2, 0.1, 0.5), LandingRefusal.None,
        DemoManuals.TrainerH4, ManualFit.Of(DemoManuals.TrainerH4).Value, DemoElectrics.Battery, DemoElectrics.Loads, DemoElectrics.Radio,
        new LiftingLine(Planform, Section).InducedDrag,
        new[] { (0.0, Length.FromMeters(1.5), Angle.Zero), (1.0, Length.FromMeters(1), Angle.Zero) },
        FlapsUp.Aeroplane.FlapSettings, Planform, Section, new LiftingLine(Planform, Section),
        new PartSpanFlap(0.1, 0.6, Angle.FromDegrees(-5), 0.8), Metar.Decode("XQAA 291450Z 24012KT 9999 18/09 Q1013").Value.Wind.Value,
    ];

    private static Circuit Flown => Circuit.Backwards(DemoCircuits.FlapsUp).Value;

    private static WingPlanform Planform => WingPlanform.Tapered(Length.FromMeters(10), Length.FromMeters(1.5), 0.6);

    private static WingSection Section => new(6, Angle.FromDegrees(-2), 1.5);

    /// <summary>Something for an argument: its default, the usual quantity of its kind, or one of what is known.</summary>
    public static object? Of(ParameterInfo parameter)
    {
        if (parameter.HasDefaultValue && !parameter.ParameterType.IsValueType) return null;
        Type type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        if (type == typeof(double)) return 0.5;
        if (type == typeof(IQuantity)) return Speed.FromKnots(1);
        if (Usual.FirstOrDefault(type.IsInstanceOfType) is { } usual) return usual;
        if (typeof(IQuantity).IsAssignableFrom(type))
            return Quantity.From(1, Quantity.Infos.Single(info => info.ValueType == type).BaseUnitInfo.Value);
        return type.IsValueType ? Activator.CreateInstance(type) : Instance(type);
    }

    public static object Instance(Type type) =>
        Known.FirstOrDefault(type.IsInstanceOfType) ?? throw new InvalidOperationException($"There is no sample of a {type.Name}.");
}
