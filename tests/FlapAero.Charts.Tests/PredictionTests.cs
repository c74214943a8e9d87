using System.Text.Json.Nodes;
using UnitsNet;

namespace FlapAero.Charts.Tests;

public sealed class PredictionTests
{
    private static Figure Empty => new Figure("Bank", Axis.Of("angle of bank", "φ", "°"), Axis.Of("stalling speed", "V_S", "kt CAS"))
        .Line("flaps up", Samples.Between(0, 60, 5), bank => 50 + bank).Caption("c").Finding("f");

    [Fact]
    public void Predicted_Nothing_DrawsNothingAndTellsThePageWhere()
    {
        Angle bankGuess = Angle.FromDegrees(0);

        Figure figure = Empty.PredictedAcross(bankGuess);

        Assert.Equal(Empty.ToSvg(), figure.ToSvg());
        JsonNode told = Assert.Single(JsonNode.Parse(figure.ToPlotlyJson())!["predictions"]!.AsArray())!;
        Assert.Equal(("bankGuess", "x", 0.0, 1.0, 0.0), ((string)told["name"]!, (string)told["axis"]!, (double)told["from"]!, (double)told["times"]!, (double)told["value"]!));
        Assert.Null(JsonNode.Parse(Empty.ToPlotlyJson())!["predictions"]);
    }

    [Fact]
    public void Predicted_ANumber_IsDrawnWhereItLies()
    {
        Angle bankGuess = Angle.FromDegrees(30);

        string across = Empty.PredictedAcross(bankGuess).ToSvg();
        string up = Empty.PredictedUp(Speed.FromKnots(10), from: 70).ToSvg();

        // Thirty degrees is the middle of an axis from 0 to 60, and 80 kt lies as high as the line at thirty degrees.
        Assert.Contains(">your prediction</text>", across, StringComparison.Ordinal);
        string middle = across[(across.IndexOf("stroke-linecap", StringComparison.Ordinal) + 26)..];
        (double left, double right) = Ends(Empty.ToSvg());
        Assert.Equal((left + right) / 2, double.Parse(middle[1..middle.IndexOf(' ', StringComparison.Ordinal)], System.Globalization.CultureInfo.InvariantCulture), 0.2);
        Assert.Contains(">your prediction</text>", up, StringComparison.Ordinal);
        Assert.DoesNotContain("your prediction", Empty.PredictedAcross(Angle.FromDegrees(400)).ToSvg(), StringComparison.Ordinal);
    }

    [Fact]
    public void In_OtherUnits_KeepsThePlace()
    {
        JsonNode speed = Told(Empty.PredictedUp(Speed.FromKnots(10), from: 70, prediction: "s").In(DisplayUnits.SI));
        JsonNode multiple = Told(Empty.PredictedUp(1.2, times: 50, prediction: "m").In(DisplayUnits.SI));

        double perKnot = Speed.FromKnots(1).MetersPerSecond;
        Assert.Equal(80 * perKnot, (double)speed["from"]! + (double)speed["times"]! * (double)speed["value"]!, 1e-4);
        Assert.Equal(10 * perKnot, (double)speed["value"]!, 1e-4);
        Assert.Equal(60 * perKnot, (double)multiple["times"]! * (double)multiple["value"]!, 1e-4);
        Assert.Equal(1.2, (double)multiple["value"]!, 1e-12);
    }

    [Fact]
    public void Predicted_NotFinite_IsRefused() =>
        Assert.Contains("the mark of the prediction g", Assert.Throws<RefusedInputException>(() => Empty.PredictedUp(1, from: double.NaN, prediction: "g")).Message, StringComparison.Ordinal);

    private static JsonNode Told(Figure figure) => JsonNode.Parse(figure.ToPlotlyJson())!["predictions"]![0]!;

    /// <summary>Where the horizontal axis begins and ends.</summary>
    private static (double, double) Ends(string svg)
    {
        string[] x = System.Xml.Linq.XElement.Parse(svg).Descendants().First(e => e.Name.LocalName == "polyline").Attribute("points")!.Value.Split(' ');
        return (double.Parse(x[0].Split(',')[0], System.Globalization.CultureInfo.InvariantCulture), double.Parse(x[^1].Split(',')[0], System.Globalization.CultureInfo.InvariantCulture));
    }
}
