namespace FlapAero.Tests.Wings;

/// <summary>The lifting line against another solution of the same equation.</summary>
public sealed class HorseshoeTests
{
    public static TheoryData<double, double, bool, double> References => new()
    {
        { 1, 0, false, 0 }, { 0.5, -3, false, 0 }, { 0.7, -2, true, 0 }, { 1, 0, false, 0.1 }, { 0.7, -2, true, 0.1 }, { 0.7, 0, true, 0.3 },
    };

    [Theory, MemberData(nameof(References))]
    public void LiftAndDrag_SameEquationByHorseshoes_Agree(double taper, double twist, bool flapDown, double heightOverSpan)
    {
        WingPlanform planform = Planforms.Tapered(7, taper, twist);
        PartSpanFlap? flap = flapDown ? Planforms.HalfSpanFlap : null;
        double? height = heightOverSpan > 0 ? heightOverSpan : null;
        const double Angle = 0.1;
        // Two panellings, extrapolated: the row of horseshoes is of first order.
        (double Lift, double Drag) coarse = Reference(60);
        (double Lift, double Drag) fine = Reference(120);
        LiftingLine line = Planforms.Line(planform, flap, height);

        double lift = line.LiftCoefficient(UnitsNet.Angle.FromRadians(Angle));

        Assert.Equal(2 * fine.Lift - coarse.Lift, lift, 5e-4);
        Assert.Equal(2 * fine.Drag - coarse.Drag, line.InducedDrag.At(lift), 5e-5);

        (double, double) Reference(int panels)
        {
            var horseshoes = new DiscreteHorseshoes(
                planform, Planforms.ThinSlope, Angle, flap, height * Planforms.Span.Meters, panels);
            return (horseshoes.LiftCoefficient, horseshoes.InducedDrag);
        }
    }
}
