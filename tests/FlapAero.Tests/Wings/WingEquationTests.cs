using FlapAero.Equations;
using MathNet.Numerics.Integration;

namespace FlapAero.Tests.Wings;

/// <summary>The wing's equations one by one, against integrals, sums and numbers worked by hand.</summary>
public sealed class WingEquationTests
{
    private static readonly FlapJump Flap = new(0.2, 0.7);

    // s_n = (2/π) ∫ χ sin φ sin nφ dφ over both flaps, in y: φ from arccos 0.7 to arccos 0.2, and again on the other wing.
    [Theory]
    [InlineData(1), InlineData(3), InlineData(5), InlineData(11)]
    public void FlapCoefficient_OddTerms_IsTheIntegral(int n)
    {
        double integral = GaussLegendreRule.Integrate(
            angle => Math.Sin(angle) * Math.Sin(n * angle), Math.Acos(0.7), Math.Acos(0.2), 64);
        Assert.Equal(4 / Math.PI * integral, Flap.Coefficient(n), 1e-12);
    }

    // The closed form is the series' sum, and it is known where the series is slow too: at the flap's very ends.
    [Theory]
    [InlineData(0.4), InlineData(1.0), InlineData(1.57), InlineData(0.795398830184144), InlineData(1.369438406004566)]
    public void FlapCirculation_AnyStation_IsTheSumOfTheSeries(double station)
    {
        double sum = 0;
        for (int i = 0; i < 4000; i++)
            sum += Flap.Coefficient(2 * i + 1) / (2 * i + 1) * Math.Sin((2 * i + 1) * station);
        Assert.Equal(sum, Flap.Circulation(station), 1e-5);
        Assert.Equal(Flap.Circulation(station), Flap.Circulation(Math.PI - station), 1e-12);
    }

    // The induced angle of the flap's own circulation is one inside and nothing outside: w = (1/π) ∫ (dG/dy₀)/(y − y₀) dy₀ says it,
    // and so does Σ n A_n sin nθ/sin θ, averaged over its ripple.
    [Theory]
    [InlineData(0.45, 1.0), InlineData(0.05, 0.0), InlineData(0.9, 0.0)]
    public void FlapCoefficient_SeriesOfTheInducedAngle_JumpsAtTheFlap(double share, double expected)
    {
        double station = Math.Acos(share), sum = 0, averaged = 0;
        const int terms = 4000;
        for (int i = 0; i < terms; i++)
        {
            sum += Flap.Coefficient(2 * i + 1) * Math.Sin((2 * i + 1) * station) / Math.Sin(station);
            averaged += sum / terms;
        }

        Assert.Equal(expected, averaged, 2e-3);
    }

    // A quarter-chord flap: cos φ = −½, φ = 120°, τ = (60° + sin 120°)/π = ⅓ + 0.8660254/π.
    [Fact]
    public void Effectiveness_QuarterChord_IsTheHandWorkedOne()
    {
        Assert.Equal(1.0 / 3 + 0.8660254037844386 / Math.PI, FlapLaws.Effectiveness(0.25), 1e-12);
        Assert.Equal(0.5 + 1 / Math.PI, FlapLaws.Effectiveness(0.5), 1e-12);
        Assert.Equal(1, FlapLaws.Effectiveness(1), 1e-12);
        Assert.Equal(2 * Math.PI * (0.05 + 0.1 * FlapLaws.Effectiveness(0.5)), FlapLaws.ThinAerofoilLift(0.05, 0.5, 0.1), 1e-12);
    }

    [Fact]
    public void ViscousTables_AtTheirOwnDegrees_GiveTheirOwnValues()
    {
        Assert.Equal(0.68, FlapLaws.ViscousEfficiency(FlapLaws.Plain, Math.PI / 9), 1e-12);
        Assert.Equal(0.76, FlapLaws.ViscousEfficiency(FlapLaws.Slotted, Math.PI / 6), 1e-12);
        Assert.Equal((60, 40), (FlapLaws.Plain.LargestDegrees, FlapLaws.Slotted.LargestDegrees));
        Assert.Equal(-FlapLaws.Effectiveness(0.3) * 0.76 * Math.PI / 6, FlapLaws.ZeroLiftAngleChange(FlapLaws.Slotted, 0.3, Math.PI / 6), 1e-12);
    }

    // The correlation's own flap gives its own value; a wider one no more, a narrower one in proportion to the angle that it turns.
    [Fact]
    public void SectionMaximumLift_ReferenceFlap_IsTheCorrelations()
    {
        double at40 = 40 * Math.PI / 180, at60 = 60 * Math.PI / 180;
        Assert.Equal(1.3, FlapLaws.SectionMaximumLiftIncrement(FlapLaws.Slotted, 0.25, at40), 1e-12);
        Assert.Equal(1.3, FlapLaws.SectionMaximumLiftIncrement(FlapLaws.Slotted, 0.4, at40), 1e-12);
        Assert.Equal(0.9, FlapLaws.SectionMaximumLiftIncrement(FlapLaws.Plain, 0.25, at60), 1e-12);
        Assert.Equal(
            1.3 * FlapLaws.Effectiveness(0.15) / FlapLaws.Effectiveness(0.25) * (0.83 * 20) / (0.68 * 40),
            FlapLaws.SectionMaximumLiftIncrement(FlapLaws.Slotted, 0.15, at40 / 2), 1e-12);
        Assert.Equal(0.9 * 1.2 * 0.5, FlapLaws.MaximumLiftIncrement(1.2, 0.5), 1e-12);
    }

    // a₀ = 2π, A = 7, τ = 0.2: a = 2π/(1 + 2·1.2/7).
    [Fact]
    public void FiniteWing_ByHand_AndBack()
    {
        const double slope = 2 * Math.PI / (1 + 2.4 / 7);
        Assert.Equal(slope, FiniteWingLaws.Slope(2 * Math.PI, 7, 0.2), 1e-12);
        Assert.Equal(2 * Math.PI, FiniteWingLaws.SectionSlope(slope, 7, 0.2), 1e-12);
        Assert.Equal(0.2, FiniteWingLaws.SlopeFactor(slope, 2 * Math.PI, 7), 1e-12);
        Assert.Equal(0.36 * 1.05 / (7 * Math.PI), FiniteWingLaws.InducedDrag(0.6, 7, 0.05), 1e-12);
    }

    // Without ground C_Di = πA Σ n A_n² of the whole solution, at any angle: flap and twist, with angle and without.
    [Theory]
    [InlineData(0.0, true), InlineData(0.12, true), InlineData(-0.05, false), InlineData(0.12, false)]
    public void Drag_OfAngleAndFlap_IsTheSumOverTheSeries(double angle, bool flapDown)
    {
        const double flapAngle = 0.15;
        LiftingLineSystem line = System(flapDown ? Flap : null, flapDown ? flapAngle : 0, null, 24);
        double sum = 0, lift = 0;
        for (int i = 0; i < 4000; i++)
        {
            int n = 2 * i + 1;
            double solved = i < 24 ? angle * line.PerAngle[i] + line.Fixed[i] : 0;
            double whole = solved + (flapDown ? flapAngle * Flap.Coefficient(n) / n : 0);
            sum += n * whole * whole;
            lift += i == 0 ? whole : 0;
        }

        Assert.Equal(7 * Math.PI * sum, angle * angle * line.DragPerAngle + 2 * angle * line.DragMixed + line.DragFixed, 1e-12);
        Assert.Equal(7 * Math.PI * lift, angle * line.Slope + line.LiftAtZero, 1e-12);
    }

    // Near the ground C_Di = πA (Σ n A_n² − (2/π) ∫ G w sin θ dθ), w = Σ n A_n J_n from the whole solution.
    [Theory]
    [InlineData(0.0, true), InlineData(0.12, true), InlineData(0.12, false)]
    public void Drag_NearTheGround_IsTheIntegralOfCirculationAndWash(double angle, bool flapDown)
    {
        const double flapAngle = 0.15;
        GroundImage ground = new(0.15);
        LiftingLineSystem line = System(flapDown ? Flap : null, flapDown ? flapAngle : 0, ground, 24);
        LiftingLineSystem free = System(flapDown ? Flap : null, flapDown ? flapAngle : 0, null, 24);
        double own = 0;
        double[] whole = new double[4000];
        for (int i = 0; i < whole.Length; i++)
        {
            whole[i] = (i < 24 ? angle * line.PerAngle[i] + line.Fixed[i] : 0) + (flapDown ? flapAngle * Flap.Coefficient(2 * i + 1) / (2 * i + 1) : 0);
            own += (2 * i + 1) * whole[i] * whole[i];
        }

        double image = GaussLegendreRule.Integrate(
            station =>
            {
                double[] influence = ground.Influence(station, 200);
                double wash = 0;
                for (int i = 0; i < influence.Length; i++)
                    wash += (2 * i + 1) * whole[i] * influence[i];
                double circulation = angle * line.CirculationPerAngle(station) + line.CirculationFixed(station);
                return circulation * wash * Math.Sin(station);
            },
            0, Math.PI / 2, 128);
        // Over the whole span twice the half's: πA (2/π)(2 ∫).
        double expected = 7 * Math.PI * (own - 4 / Math.PI * image);
        double actual = angle * angle * line.DragPerAngle + 2 * angle * line.DragMixed + line.DragFixed;
        Assert.Equal(expected, actual, 1e-4 * Math.Abs(expected));
        Assert.True(actual < angle * angle * free.DragPerAngle + 2 * angle * free.DragMixed + free.DragFixed);
    }

    private static LiftingLineSystem System(FlapJump? flap, double flapAngle, GroundImage? image, int terms)
    {
        // Aspect ratio 7, taper 0.6: c/b = (2/A)(1 − 0.4 y)/1.6; two degrees of washout.
        SpanShape shape = new(7, share => 2.0 / 7 * (1 - 0.4 * share) / 1.6, _ => 6, share => 0.03 - 0.035 * share);
        return new(shape, flap, flapAngle, image, terms);
    }
}
