using UnitsNet;

namespace FlapAero.Charts.Tests;

public sealed class FigureUnitsTests
{
    private static readonly Figure Glide = new Figure("Sink", Axis.Of("airspeed", "V", "kt CAS").Including(0), Axis.Of("rate of sink", "", "ft/min"))
        .Line("flaps up", [50, 100], [500, 1000])
        .Level("most", 1000)
        .Mark("best", 60, 600)
        .Caption("Sink against airspeed.")
        .Finding($"At {Speed.FromKnots(60)} it sinks {Speed.FromFeetPerMinute(600):ft/min 0}.");

    [Fact]
    public void In_SI_TakesAxesValuesAndWordsAlong()
    {
        Figure si = Glide.In(DisplayUnits.SI);

        Assert.Equal(("m/s CAS", "m/s"), (si.X.Unit, si.Y.Unit));
        Assert.Equal(50 * 1852 / 3600.0, si.Lines[0].X[0], 1e-9);
        Assert.Equal(5.08, si.Lines[0].Y[1], 1e-9);
        Assert.Equal(5.08, si.Levels[0].Y, 1e-9);
        Assert.Equal((60 * 1852 / 3600.0, 3.048), (si.Marks[0].X, Math.Round(si.Marks[0].Y, 9)));
        Assert.Equal("At 30.9 m/s it sinks 3.0 m/s.", si.FindingText.Replace(QuantityText.NoBreakSpace, ' '));
        Assert.Equal(Glide.CaptionText, si.CaptionText);
    }

    [Fact]
    public void In_Aviation_IsTheFigureItself() => Assert.Same(Glide, Glide.In(DisplayUnits.Aviation));

    [Fact]
    public void In_SIOfAMovingFigure_TakesTheControlAlong()
    {
        MovingFigure moving = new Figure("Drift", Axis.Of("time", "t", "s"), Axis.Of("drift", "", "ft"))
            .Caption("Drift in wind.")
            .Moving(Axis.Of("wind", "w", "kt"), [0, 5, 10], start: 5, (figure, wind) => figure
                .Line("drift", [0, 10], [0, 10 * wind])
                .Finding($"In {Speed.FromKnots(wind)} of wind it drifts."));

        MovingFigure si = moving.In(DisplayUnits.SI);

        Assert.Equal("m/s", si.Control.Unit);
        Assert.Equal(5 * 1852 / 3600.0, si.Start, 1e-9);
        Assert.Equal(100 * 0.3048, si.Frames[2].Lines[0].Y[1], 1e-9);
        Assert.Equal(si.Frames[0].Y.ToString(), si.Frames[2].Y.ToString());
        Assert.Contains("2.6\u00a0m/s", si.ToHtml(), StringComparison.Ordinal);
        Assert.DoesNotContain("kt", si.ToString(), StringComparison.Ordinal);
    }
}
