using AngleSharp.Html.Parser;
using FlapAero.Handouts.Pages;

namespace FlapAero.Handouts.Tests;

/// <summary>A formula as a reader hears it who does not see it.</summary>
public sealed class FormulaWordsTests : IDisposable
{
    private readonly Mathematics _mathematics = new();

    public void Dispose() => _mathematics.Dispose();

    [Theory]
    [InlineData(@"V_S = \sqrt{\frac{2\,W}{\rho\,S\,C_{L\max}}}",
        "stall speed equals the square root of 2 times weight, over density times wing area times maximum lift coefficient")]
    [InlineData(@"C_{L\max}", "C L max")]
    [InlineData(@"\gamma_d", "gamma d")]
    [InlineData(@"n = 1/\cos\varphi", "n equals 1 over the cosine of the bank angle")]
    [InlineData(@"(D-T)/W", "the quantity drag minus thrust, over weight")]
    [InlineData(@"E = \tfrac{1}{2}\, m\, (V - w)^2", "energy equals one half times mass times the quantity airspeed minus headwind, squared")]
    [InlineData(@"t = s\,H\left(\frac{I_r}{I}\right)^{k}", "t equals s times H times the quantity I r over I, to the power k")]
    [InlineData(@"\frac{dh_e}{dt} = \frac{V\,(T - D)}{W}", "the rate of change of energy height with time equals airspeed times the quantity thrust minus drag, over weight")]
    [InlineData(@"\sigma = \sqrt{\sigma_1^2 + \dots}", "sigma equals the square root of sigma 1 squared plus and so on")]
    [InlineData(@"-3 \le \pm 2\sqrt n", "minus 3 is at most plus or minus 2 times the square root of n")]
    [InlineData(@"\Delta x \approx a, \qquad 30^\circ \ge \sqrt[3]{8}", "the change in x is about a, 30 degrees is at least the root 3 of 8")]
    [InlineData(@"W \cdot \text{sink} = D\,V - T\,V", "weight times sink equals drag times airspeed minus thrust times airspeed")]
    [InlineData(@"V^3", "airspeed cubed")]
    public void Formula_InTeX_IsSaidInWords(string tex, string words) =>
        Assert.Equal(words, FormulaWords.Of(new HtmlParser().ParseDocument(_mathematics.ToMathMl(tex, display: false, "a test")).QuerySelector("math")!));
}
