using System.Text;
using System.Text.Json;
using FlapAero.Handouts.Briefings;
using FlapAero.Handouts.Printing;
using FlapAero.Handouts.Schools;
using FlapAero.Notebooks;
using FlapAero.Tests;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UnitsNet;

namespace FlapAero.Handouts.Tests.Briefings;

[Trait("Speed", "slow")]
public sealed class BriefingPageTests(Browser browser, Printer printer) : IClassFixture<Printer>
{
    private static readonly BriefingSheet Demo = BriefingSheet.Of(Briefing.For(DemoBriefings.Flight).Value);

    [Fact]
    public void ToHtml_SameFlight_GivesSameBytesWithoutScriptOrClock()
    {
        string html = BriefingPage.ToHtml(Demo, Paper.A4);
        Assert.Equal(html, BriefingPage.ToHtml(BriefingSheet.Of(Briefing.For(DemoBriefings.Flight).Value), Paper.A4));
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(" src=", html, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', html);
        Assert.Contains("<title>Landing without flaps: briefing, Trainer H4, runway 24</title>", html, StringComparison.Ordinal);
    }

    [Theory, InlineData(1280), InlineData(390)]
    public async Task Page_Opened_PassesAxeOfflineWithoutComplaint(int width)
    {
        string path = Save(Demo);
        await using Tab tab = await browser.OpenAsync(new Uri(path).AbsoluteUri, width);

        Assert.Empty(await tab.AxeViolationsAsync());
        Assert.Empty(tab.Complaints);
        Assert.All(tab.Requests.Where(r => !r.StartsWith("data:", StringComparison.Ordinal)), r => Assert.EndsWith("brief.html", r, StringComparison.Ordinal));
        File.Delete(path);
    }

    [Theory, InlineData(390, 1), InlineData(320, 1), InlineData(1280, 1), InlineData(1280, 2)]
    public async Task Page_NarrowOrEnlarged_DoesNotScrollSideways(int width, int enlarged)
    {
        string path = Save(Demo);
        await using Tab tab = await browser.OpenAsync(new Uri(path).AbsoluteUri, width);
        await tab.AskAsync<JsonElement?>($"(document.documentElement.style.fontSize = '{106.25 * enlarged}%', null)");

        string[] wide = await tab.AskAsync<string[]>("""
            [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > innerWidth + 1).map(e => e.outerHTML.slice(0, 120))
            """);

        Assert.Empty(wide);
        File.Delete(path);
    }

    [Theory]
    [InlineData(Paper.A4, "demo"), InlineData(Paper.Letter, "demo"), InlineData(Paper.A4, "wordy"), InlineData(Paper.Letter, "wordy")]
    [InlineData(Paper.A4, "unfit"), InlineData(Paper.Letter, "unfit"), InlineData(Paper.A4, "light"), InlineData(Paper.Letter, "light")]
    public async Task Page_Printed_IsOneSheetWithCautionAndPlaceToSign(Paper paper, string sheet)
    {
        byte[] bytes = await printer.PrintAsync(BriefingPage.ToHtml(Sheets[sheet], paper), paper);

        using PdfDocument pdf = PdfDocument.Open(bytes);
        Page page = pdf.GetPage(1);
        // Two letters in one glyph, as in "fi", come apart.
        string letters = string.Concat(page.Letters.Select(letter => letter.Value)).Normalize(NormalizationForm.FormKC).Replace(" ", "", StringComparison.Ordinal);
        Assert.Equal(1, pdf.NumberOfPages);
        Assert.Equal(paper == Paper.A4 ? 842 : 792, page.Height, 1.5);
        Assert.Contains(BriefingSheet.Caution.Replace(" ", "", StringComparison.Ordinal), letters, StringComparison.Ordinal);
        Assert.All(["Student", "Date", "Instructor", "Signature"], label => Assert.Contains(label, letters, StringComparison.Ordinal));
        // Nothing runs off the paper, and nothing was shrunk to fit: the headings of a sheet have the sheet's own size.
        Assert.All(page.Letters, letter => Assert.InRange(letter.EndBaseLine.X, 20, page.Width - 20));
        Assert.Equal(14, page.Letters.First(letter => letter.Value == "L").PointSize, 0.5);
        // Its smallest print is read on a knee in a cockpit, the words under its rules and at its foot too.
        Assert.Equal(9, page.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).Min(letter => letter.PointSize), 0.05);
        // No letter stands on another, but for kerning: a table that is too wide runs into what is beside it.
        Letter[] drawn = [.. page.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).OrderBy(letter => letter.StartBaseLine.X)];
        Assert.All(drawn.GroupBy(letter => Math.Round(letter.StartBaseLine.Y, 1)), line => Assert.All(
            line.Zip(line.Skip(1)), two => Assert.True(
                two.Second.StartBaseLine.X > two.First.EndBaseLine.X - 2, $"{two.First.Value} and {two.Second.Value} at {two.First.StartBaseLine}")));
    }

    [Theory]
    [InlineData(Paper.A4, 1600), InlineData(Paper.Letter, 1600), InlineData(Paper.Letter, 900)]
    public async Task Exercise_Printed_IsOneSheetOfLettersThatCanBeRead(Paper paper, double metres)
    {
        byte[] bytes = await printer.PrintAsync(BriefingPage.ToHtml(Exercise(metres), paper), paper);

        using PdfDocument pdf = PdfDocument.Open(bytes);
        Page page = pdf.GetPage(1);
        Assert.Equal(1, pdf.NumberOfPages);
        Assert.All(page.Letters, letter => Assert.InRange(letter.EndBaseLine.X, 20, page.Width - 20));
        Assert.All(page.Letters.Where(letter => letter.StartBaseLine.Y > 40), letter => Assert.InRange(letter.PointSize, 8, 20));
    }

    [Theory, InlineData(1280), InlineData(390), InlineData(320)]
    public async Task Exercise_Opened_PassesAxeAndDoesNotScrollSideways(int width)
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("flapaero-brief-").FullName, "exercise.html");
        await File.WriteAllTextAsync(path, BriefingPage.ToHtml(Exercise(1600), Paper.A4), TestContext.Current.CancellationToken);
        await using Tab tab = await browser.OpenAsync(new Uri(path).AbsoluteUri, width);

        Assert.Empty(await tab.AxeViolationsAsync());
        Assert.Empty(tab.Complaints);
        Assert.Equal(width, await tab.AskAsync<int>("document.documentElement.scrollWidth"));
        File.Delete(path);
    }

    [Theory]
    [InlineData(Paper.A4, 1600), InlineData(Paper.A4, 900), InlineData(Paper.Letter, 1600), InlineData(Paper.Letter, 900)]
    public async Task Drills_Printed_AreOneSheetOfLettersThatCanBeRead(Paper paper, double metres)
    {
        byte[] bytes = await printer.PrintAsync(BriefingPage.ToHtml(DrillSheet.Of(Exercise(metres).Briefing), paper), paper);

        using PdfDocument pdf = PdfDocument.Open(bytes);
        Page page = pdf.GetPage(1);
        Assert.Equal(1, pdf.NumberOfPages);
        Assert.All(page.Letters, letter => Assert.InRange(letter.EndBaseLine.X, 20, page.Width - 20));
        Assert.Equal(9, page.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).Min(letter => letter.PointSize), 0.05);
    }

    [Theory, InlineData(1280), InlineData(390), InlineData(320)]
    public async Task Drills_Opened_PassAxeAndDoNotScrollSideways(int width)
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("flapaero-brief-").FullName, "drills.html");
        await File.WriteAllTextAsync(path, BriefingPage.ToHtml(DrillSheet.Of(Exercise(1600).Briefing), Paper.A4), TestContext.Current.CancellationToken);
        await using Tab tab = await browser.OpenAsync(new Uri(path).AbsoluteUri, width);

        Assert.Empty(await tab.AxeViolationsAsync());
        Assert.Empty(tab.Complaints);
        Assert.Equal(width, await tab.AskAsync<int>("document.documentElement.scrollWidth"));
        File.Delete(path);
    }

    /// <summary>Name, foot line, addition to the caution and how the flight was chosen leave room for the numbers.</summary>
    [Theory]
    [InlineData(0, Paper.A4, "demo"), InlineData(0, Paper.Letter, "demo"), InlineData(0, Paper.A4, "unfit"), InlineData(0, Paper.Letter, "unfit")]
    [InlineData(1, Paper.A4, "demo"), InlineData(1, Paper.Letter, "demo"), InlineData(2, Paper.A4, "demo"), InlineData(2, Paper.Letter, "demo")]
    public async Task PaperOfASchool_Printed_IsOneSheetWithItsNameAndFoot(int kind, Paper paper, string flight)
    {
        string file = RepositoryRoot.Path("data/schools/quillmere.json");
        SchoolMarks marks = SchoolMarks.Of(School.Parse(await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), file), file);
        (string, string)[] notes =
        [
            ("Aerodrome", "Quillmere"), ("Runway in use", "24 is proposed: it has the most headwind. What the aerodrome says counts."), ("Weather", "METAR of XQAA"),
            ("Runway", "23 m wide. The threshold is displaced by 80 m; lengths count from it."), ("Weight", "None is given; it is the greatest of Trainer H4."),
        ];
        string html = BriefingPaper.Of((BriefingKind)kind, Sheets[flight].Briefing, paper, marks, null, notes).Html;

        using PdfDocument pdf = PdfDocument.Open(await printer.PrintAsync(html, paper));

        Assert.Equal(1, pdf.NumberOfPages);
        string letters = string.Concat(pdf.GetPage(1).Letters.Select(letter => letter.Value)).Normalize(NormalizationForm.FormKC);
        Assert.Contains(marks.School.Name, letters, StringComparison.Ordinal);
        Assert.Contains(marks.School.FootLine, letters, StringComparison.Ordinal);
        Assert.Contains(marks.School.Caution, letters, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_PrintedTwice_GivesTheSameBytes()
    {
        string html = BriefingPage.ToHtml(Demo, Paper.A4);
        await using PdfPrinter other = await printer.AnotherAsync();
        Assert.Equal(await printer.PrintAsync(html, Paper.A4), await other.PrintAsync(html, Paper.A4, TestContext.Current.CancellationToken));
    }

    private static IReadOnlyDictionary<string, BriefingSheet> Sheets => new Dictionary<string, BriefingSheet>
    {
        ["demo"] = Demo,
        ["wordy"] = Wordy(),
        ["unfit"] = Unfit(DemoAeroplanes.TrainerH4),
        ["light"] = Unfit(DemoAeroplanes.TrainerL2),
    };

    /// <summary>A landing that must not be flown: too short a runway, and too much wind across it.</summary>
    private static BriefingSheet Unfit(Aeroplane aeroplane)
    {
        Runway runway = new()
        {
            Name = "24R",
            Direction = Angle.FromDegrees(240),
            LengthAvailable = Length.FromMeters(700),
            Surface = RunwaySurface.WetGrass,
            Slope = -0.01,
            Elevation = Length.FromFeet(1450),
        };
        Air air = Air.AtTemperature(Length.FromFeet(1320), Temperature.FromDegreesCelsius(30));
        BriefingWind wind = new(new Wind(Angle.FromDegrees(310), Speed.FromKnots(14)), Speed.FromKnots(22));
        return BriefingSheet.Of(Briefing.For(new(aeroplane, aeroplane.MaximumMass, runway, air, wind, hand: CircuitHand.Right)).Value);
    }

    /// <summary>The longest words that the sheet knows, on Letter the fullest page.</summary>
    private static BriefingSheet Wordy()
    {
        BriefingRequest demo = DemoBriefings.Flight;
        Runway runway = demo.Runway with { LengthAvailable = Length.FromMeters(1200), Slope = -0.004 };
        BriefingWind wind = new(new Wind(Angle.FromDegrees(310), Speed.FromKnots(14)), Speed.FromKnots(22));
        LandingMargin margin = new(1.67, "as the school's training manual asks for on short and unfamiliar runways");
        return BriefingSheet.Of(Briefing.For(new(demo.Aeroplane, Mass.FromKilograms(800), runway, demo.Air, wind, hand: CircuitHand.Right, margin: margin)).Value);
    }

    private static ExerciseSheet Exercise(double metres)
    {
        BriefingRequest demo = DemoBriefings.Flight;
        return ExerciseSheet.Of(Briefing.For(new(
            demo.Aeroplane, demo.Aeroplane.MaximumMass, demo.Runway with { LengthAvailable = Length.FromMeters(metres) }, demo.Air, demo.Wind)).Value);
    }

    private static string Save(BriefingSheet sheet)
    {
        string folder = Directory.CreateTempSubdirectory("flapaero-brief-").FullName;
        string path = Path.Combine(folder, "brief.html");
        File.WriteAllText(path, BriefingPage.ToHtml(sheet, Paper.A4));
        return path;
    }
}
