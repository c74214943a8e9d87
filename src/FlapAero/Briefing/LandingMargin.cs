using UnitsNet;

namespace FlapAero;

/// <summary>What a computed landing distance is multiplied by before it is held against a runway, and who says so. Immutable.</summary>
public sealed class LandingMargin
{
    /// <summary>A margin.</summary>
    /// <param name="factor">The factor, 1 to 3.</param>
    /// <param name="origin">Who asks for it, in words.</param>
    /// <exception cref="RefusedInputException">No origin; a factor outside its range.</exception>
    public LandingMargin(double factor, string origin)
    {
        Require.Words(origin, "origin of the margin");
        Factor = Require.Between(factor, 1, 3, "margin factor", "Below 1 it is no margin; past 3 it is another runway.");
        Origin = origin;
    }

    /// <summary>Standing from 50 ft within 70 % of the runway: [cat-pol-a-330], which binds operators and is the default here.</summary>
    public static LandingMargin SeventyPercent { get; } = new(1 / 0.7, "stop within 70\u00A0% of the runway, CAT.POL.A.330");

    /// <summary>Share of a headwind that is planned with: [cat-pol-a-330].</summary>
    public const double HeadwindShare = 0.5;

    /// <summary>Share of a tailwind that is planned with: [cat-pol-a-330].</summary>
    public const double TailwindShare = 1.5;

    /// <summary>The factor.</summary>
    public double Factor { get; }

    /// <summary>Who asks for it.</summary>
    public string Origin { get; }

    /// <summary>The headwind that a landing distance is planned with.</summary>
    /// <remarks>Formula: half of a headwind, one and a half of a tailwind, or a school's own shares. Range: wind to 100 kt; shares 0 to 1 and 1 to 3. Source: [cat-pol-a-330].</remarks>
    /// <param name="headwind">w as reported; a tailwind is negative.</param>
    /// <param name="headwindShare">Share of a headwind.</param>
    /// <param name="tailwindShare">Share of a tailwind.</param>
    /// <returns>The headwind to plan with.</returns>
    /// <exception cref="RefusedInputException">A wind that nobody lands in; a share outside its range.</exception>
    /// <example><code>LandingMargin.PlannedHeadwind(Speed.FromKnots(-4)).Knots // -6.0</code></example>
    public static Speed PlannedHeadwind(Speed headwind, double headwindShare = HeadwindShare, double tailwindShare = TailwindShare)
    {
        double wind = Require.Headwind(headwind);
        Require.Between(headwindShare, 0, 1, "share of the headwind", "No more wind is there than is reported.");
        Require.Between(tailwindShare, 1, 3, "share of the tailwind", "Less than is reported is no plan.");
        return headwind * (wind > 0 ? headwindShare : tailwindShare);
    }
}
