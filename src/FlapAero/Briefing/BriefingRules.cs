using UnitsNet;

namespace FlapAero;

/// <summary>
/// By which rules a flight is briefed and a lesson flown, as the school has them; what nobody gives is <see cref="BriefingTechnique"/>'s, with its reason
/// there. Immutable, thread-safe; a value outside its range is refused where it is given.
/// </summary>
public sealed record BriefingRules
{
    private const string NoReference = "The regulation's is 1.3; less leaves no margin, and more is a float that no runway holds.";

    /// <summary>The rules where no school gives others.</summary>
    public static BriefingRules Usual { get; } = new();

    /// <summary>V_REF over V_S with flaps up, 1.2 to 2.</summary>
    public double FlapsUpMultiple
    {
        get;
        init => field = Require.Between(value, 1.2, 2, "reference multiple", NoReference, nameof(FlapsUpMultiple));
    } = BriefingTechnique.FinalMultiple;

    /// <summary>V_REF over V_S with flaps between up and full, 1.2 to 2.</summary>
    public double PartFlapsMultiple
    {
        get;
        init => field = Require.Between(value, 1.2, 2, "reference multiple", NoReference, nameof(PartFlapsMultiple));
    } = BriefingTechnique.FinalMultiple;

    /// <summary>V_REF over V_S with full flaps, 1.2 to 2.</summary>
    public double FullFlapsMultiple
    {
        get;
        init => field = Require.Between(value, 1.2, 2, "reference multiple", NoReference, nameof(FullFlapsMultiple));
    } = BriefingTechnique.FinalMultiple;

    /// <summary>Steepest bank in the circuit, 10° to 45°; the turns are planned with it where it is below the usual bank.</summary>
    public Angle BankLimit
    {
        get;
        init => field = Require.Between(
            value, Angle.FromDegrees(10), Angle.FromDegrees(45), "bank limit",
            "Less makes no circuit; more lifts the stalling speed too far for a turn near the ground.", nameof(BankLimit));
    } = BriefingTechnique.BankLimit;

    /// <summary>Height above the runway by which the aeroplane is stable or goes around, 100 ft to 1 000 ft.</summary>
    public Length StabilisedBy
    {
        get;
        init => field = Require.Between(
            value, Length.FromFeet(100), Length.FromFeet(1000), "stable height",
            "Lower leaves no time to go around; higher is the circuit.", nameof(StabilisedBy));
    } = BriefingTechnique.StabilisedBy;

    /// <summary>Wheels over the threshold, 5 m to 60 m.</summary>
    public Length ThresholdHeight
    {
        get;
        init => field = FinalPath.Over(value, argument: nameof(ThresholdHeight));
    } = LandingPilot.Usual.ThresholdHeight;

    /// <summary>What a landing distance is multiplied by before it is held against a runway.</summary>
    public LandingMargin Margin { get; init => field = Require.Given(value); } = LandingMargin.SeventyPercent;

    /// <summary>Share of the gust factor that is added on final, 0 to 1.</summary>
    public double GustShare
    {
        get;
        init => field = Require.Between(value, 0, 1, "share of the gust factor", "It is a share.", nameof(GustShare));
    } = BriefingTechnique.GustShare;

    /// <summary>The most that is added for gusts, 0 to 30 kt; no limit where none is given.</summary>
    public Speed? MostForGusts
    {
        get;
        init => field = value is { } most
            ? Require.Between(most, Speed.Zero, Speed.FromKnots(30), "most for gusts", "It is added to the speed on final.", nameof(MostForGusts))
            : null;
    }

    /// <summary>Share of a headwind that a landing is planned with, 0 to 1.</summary>
    public double HeadwindShare
    {
        get;
        init => field = Require.Between(value, 0, 1, "share of the headwind", "No more wind is there than is reported.", nameof(HeadwindShare));
    } = LandingMargin.HeadwindShare;

    /// <summary>Share of a tailwind that a landing is planned with, 1 to 3.</summary>
    public double TailwindShare
    {
        get;
        init => field = Require.Between(value, 1, 3, "share of the tailwind", "Less than is reported is no plan.", nameof(TailwindShare));
    } = LandingMargin.TailwindShare;

    /// <summary>The least circuit height above the runway, 150 m to 3 000 m; a lower circuit is refused. None where none is given.</summary>
    public Length? LeastCircuitHeight
    {
        get;
        init => field = value is { } least
            ? Require.Between(
                least, Length.FromMeters(150), Length.FromMeters(3000), "least circuit height",
                "Lower leaves no room above the height to be established by.", nameof(LeastCircuitHeight))
            : null;
    }

    /// <summary>Downwind, level, with flaps up.</summary>
    public CircuitSpeed Downwind { get; init => field = Require.Given(value); } = CircuitSpeed.OfStall(BriefingTechnique.LevelMultiple);

    /// <summary>From power reduced to the end of base; a multiple counts with the flaps of each leg.</summary>
    public CircuitSpeed Descending { get; init => field = Require.Given(value); } = CircuitSpeed.OfStall(BriefingTechnique.DescentMultiple);

    /// <summary>How much faster than briefed final may be, 1 kt to 20 kt.</summary>
    public Speed FastBy
    {
        get;
        init => field = Require.Between(
            value, Speed.FromKnots(1), Speed.FromKnots(20), "tolerance above", "Less nobody holds; more is another approach.", nameof(FastBy));
    } = BriefingTechnique.FastBy;

    /// <summary>How much slower than briefed final may be, 0 to 10 kt.</summary>
    public Speed SlowBy
    {
        get;
        init => field = Require.Between(
            value, Speed.Zero, Speed.FromKnots(10), "tolerance below", "More eats the margin above the stall.", nameof(SlowBy));
    } = BriefingTechnique.SlowBy;

    /// <summary>The school's own factors on the distance on dry asphalt, by surface; where a surface has none, the rule's counts.</summary>
    internal IReadOnlyDictionary<RunwaySurface, SurfaceRule> SurfaceRules { get; init; } = new Dictionary<RunwaySurface, SurfaceRule>();

    internal SurfaceRule? RuleFor(RunwaySurface surface) => SurfaceRules.GetValueOrDefault(surface) ?? surface.Rule;

    internal Speed Additive(Speed gustFactor)
    {
        Speed added = Gust.Additive(gustFactor, GustShare);
        return MostForGusts is { } most && added > most ? most : added;
    }

    internal Speed PlannedHeadwind(Speed headwind) => LandingMargin.PlannedHeadwind(headwind, HeadwindShare, TailwindShare);

    internal Angle Bank => BankLimit < BriefingTechnique.Bank ? BankLimit : BriefingTechnique.Bank;

    internal Length RollOut => StabilisedBy + BriefingTechnique.RollOutAbove;

    internal double MultipleOf(Aeroplane aeroplane, FlapSetting flaps) =>
        flaps == aeroplane.FlapsUp ? FlapsUpMultiple : flaps == aeroplane.FullFlaps ? FullFlapsMultiple : PartFlapsMultiple;
}
