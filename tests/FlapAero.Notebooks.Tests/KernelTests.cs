using System.IO.Compression;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Text.RegularExpressions;
using FlapAero.Charts;
using FlapAero.Tests;
using Microsoft.DotNet.Interactive.Formatting;
using UnitsNet;

namespace FlapAero.Notebooks.Tests;

public class KernelTests
{
    [Fact]
    public void Begin_Twice_FormatsQuantitiesAndFiguresAsHtmlFirst()
    {
        Lesson.Begin();
        Lesson lesson = Lesson.Begin();
        Assert.Equal("<span class=\"quantity\">51.1\u00A0kt</span>", Speed.FromKnots(51.13).ToDisplayString(HtmlFormatter.MimeType));
        Assert.Equal("51.1\u00A0kt", Speed.FromKnots(51.13).ToDisplayString(PlainTextFormatter.MimeType));
        Figure figure = new Figure("Title", Axis.Of("x"), Axis.Of("y")).Line("a", [0, 1], [0.0, 1]).Caption("Caption.").Finding("Finding.");
        Assert.Equal(figure.ToNotebookHtml(), figure.ToDisplayString(HtmlFormatter.MimeType));
        Assert.Equal(HtmlFormatter.MimeType, Formatter.GetPreferredMimeTypesFor(typeof(Figure)).First());
        MovingFigure moving = figure.Moving(Axis.Of("z"), [1, 2], 1, (f, z) => f.Mark("m", 0.5, z));
        Assert.Equal(moving.ToNotebookHtml(), moving.ToDisplayString(HtmlFormatter.MimeType));
        Assert.Equal(moving.ToString(), moving.ToDisplayString(PlainTextFormatter.MimeType));
        Assert.Equal(HtmlFormatter.MimeType, Formatter.GetPreferredMimeTypesFor(typeof(Speed)).First());
        LessonResult[] results =
        [
            lesson.Say($"Said {Speed.FromKnots(1)}."), lesson.Table("t", (int[])[1], ("v", v => v)), lesson.Compare("c", 1, 2.0),
            lesson.Check("c", 1, 2.0, 0.1), lesson.Problem("p", "q", "h", 1, 0.1, "s"),
        ];
        Assert.All(results, result =>
        {
            Assert.Equal(result.ToHtml(), result.ToDisplayString(HtmlFormatter.MimeType));
            Assert.Equal(result.ToString(), result.ToDisplayString(PlainTextFormatter.MimeType));
            Assert.Equal(HtmlFormatter.MimeType, Formatter.GetPreferredMimeTypesFor(result.GetType()).First());
        });
    }

    [Fact]
    public void Begin_LessonAsACellsValue_SaysWhatItIsAboutAndBringsWhatDrawsFigures()
    {
        Lesson lesson = Lesson.Begin(7, DemoAeroplanes.TrainerL2);
        Assert.Equal("Lesson ready: Trainer L2, seed 7.", lesson.ToDisplayString(PlainTextFormatter.MimeType));
        string html = lesson.ToDisplayString(HtmlFormatter.MimeType);
        var page = Html.Parse(html);
        Assert.Equal("Lesson ready: Trainer L2, seed 7.", page.QuerySelector("p.lesson-ready")!.TextContent);
        string script = Assert.Single(page.QuerySelectorAll("script")).TextContent;
        Assert.Contains("function drawFigures(bringPlotly)", script, StringComparison.Ordinal);
        Assert.DoesNotContain("http", html, StringComparison.Ordinal);
        Assert.Contains(FigureScript.PlotlyNotice, script, StringComparison.Ordinal);
        Assert.Equal(FigureScript.Plotly, Unpacked(Regex.Match(script, "unpackPlotly\\(\"([A-Za-z0-9+/=]+)\"\\)").Groups[1].Value));
        Assert.InRange(html.Length, 300_000, 600_000);
    }

    [Fact]
    public void SetupCell_Lines_AreThoseOfEveryNotebook()
    {
        string[] lines = Lesson.SetupCell.Split('\n');
        Assert.Equal(2, lines.Length);
        Assert.StartsWith("#r \"../artifacts/lessons/FlapAero.Notebooks.dll\"", lines[0], StringComparison.Ordinal);
        Assert.EndsWith("var lesson = Lesson.Begin(); lesson", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void LessonFolder_Flat_HoldsEveryAssemblyThatIsNotTheRuntimes()
    {
        string folder = RepositoryRoot.Path("artifacts/lessons");
        string[] files = Directory.GetFiles(folder, "*.dll");
        Assert.Contains("FlapAero.Notebooks.dll", files.Select(Path.GetFileName));
        string runtime = Path.GetDirectoryName(typeof(object).Assembly.Location)!;
        string[] missing = [.. files.SelectMany(References).Distinct()
            .Where(name => !File.Exists(Path.Combine(folder, name + ".dll")) && !File.Exists(Path.Combine(runtime, name + ".dll")))];
        Assert.Empty(missing);
    }

    private static string Unpacked(string packed)
    {
        using var gzip = new GZipStream(new MemoryStream(Convert.FromBase64String(packed)), CompressionMode.Decompress);
        using var reader = new StreamReader(gzip);
        return reader.ReadToEnd();
    }

    private static IEnumerable<string> References(string file)
    {
        using var reader = new PEReader(File.OpenRead(file));
        MetadataReader metadata = reader.GetMetadataReader();
        return [.. metadata.AssemblyReferences.Select(handle => metadata.GetString(metadata.GetAssemblyReference(handle).Name))];
    }
}
