using System.Text;
using FlapAero.Handouts.Pages;
using FlapAero.Handouts.Printing;
using FlapAero.Tests;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace FlapAero.Handouts.Tests.Printing;

[Trait("Speed", "slow")]
public sealed class PdfPrinterTests(Printer printer) : IClassFixture<Printer>
{
    private const string Html = """
        <!DOCTYPE html><html lang="en"><head><title>A sheet</title></head><body><h1>First</h1>
        <p id="said">as written</p><script>document.getElementById("said").textContent = "as scripted";</script>
        <p><a href="05-other.html">the next lesson</a></p><img alt="" src="http://203.0.113.1/a.png">
        <div role="img" aria-label="a rising curve"><svg viewBox="0 0 99 99" width="90" aria-hidden="true"><text x="9" y="20">V</text></svg></div>
        <p>With <span class="math"><math alttext="a squared"><msup><mi>a</mi><mn>2</mn></msup></math></span> in it.</p>
        <h2 style="break-before:page">Second</h2></body></html>
        """;

    [Fact]
    public async Task PrintAsync_Twice_GivesTheSameBytes()
    {
        byte[] first = await printer.PrintAsync(Html, Paper.A4);
        await using PdfPrinter other = await printer.AnotherAsync();

        Assert.Equal(first, await printer.PrintAsync(Html, Paper.A4));
        Assert.Equal(first, await PrintAsync(other, Html));
    }

    [Fact]
    public async Task PrintAsync_Page_IsTaggedOutlinedNumberedAndDescribed()
    {
        byte[] bytes = await printer.PrintAsync(Html, Paper.A4);

        string raw = Encoding.Latin1.GetString(bytes);
        Assert.All(new[] { "/StructTreeRoot", "/Marked true", "/Outlines", "/Lang (en)", "/Alt (a rising curve)", "/Alt (a squared)" }, part => Assert.Contains(part, raw, StringComparison.Ordinal));
        using PdfDocument pdf = PdfDocument.Open(bytes);
        Assert.Equal("A sheet", pdf.Information.Title);
        Assert.Equal("D:20000101000000+00'00'", pdf.Information.CreationDate);
        Assert.Equal("D:20000101000000+00'00'", pdf.Information.ModifiedDate);
        Assert.Equal(2, pdf.NumberOfPages);
        Assert.All(pdf.GetPages(), page => Assert.StartsWith($"page{page.Number}of2", Letters(page), StringComparison.Ordinal));
    }

    [Fact]
    public async Task PrintAsync_Page_KeepsThePagesOwnTypeFace()
    {
        string page = PageShell.ToHtml(new PageFrame("A sheet", "sheet", "Skip to the sheet", "<h1>First</h1>", "", "<p>Some words.</p>"));

        using PdfDocument pdf = PdfDocument.Open(await printer.PrintAsync(page, Paper.A4));

        // What stands in the margin is the printer's own.
        Assert.All(
            pdf.GetPage(1).Letters.Where(letter => letter.StartBaseLine.Y > 60 && char.IsLetter(letter.Value[0])),
            letter => Assert.Contains("Inter", letter.FontName, StringComparison.Ordinal));
    }

    [Fact]
    public async Task PrintAsync_Page_RunsNoScriptAndHoldsNoFolderOfTheMachine()
    {
        byte[] bytes = await printer.PrintAsync(Html, Paper.A4);

        using PdfDocument pdf = PdfDocument.Open(bytes);
        Assert.Contains("aswritten", Letters(pdf.GetPage(1)), StringComparison.Ordinal);
        string raw = Encoding.Latin1.GetString(bytes);
        Assert.DoesNotContain("file:", raw, StringComparison.Ordinal);
        Assert.DoesNotContain("05-other", raw, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Paper.A4, "", 595, 842)]
    [InlineData(Paper.Letter, "", 612, 792)]
    [InlineData(Paper.A4, "<style>@page { size: Letter; margin: 10mm }</style>", 612, 792)]
    public async Task PrintAsync_Paper_IsThePagesOwnOrTheOneAskedFor(Paper paper, string style, int width, int height)
    {
        string html = Html.Replace("</head>", style + "</head>", StringComparison.Ordinal);

        using PdfDocument pdf = PdfDocument.Open(await printer.PrintAsync(html, paper));

        Page first = pdf.GetPage(1);
        Assert.Equal(width, first.Width, 1.5);
        Assert.Equal(height, first.Height, 1.5);
        Assert.StartsWith("page1of2", Letters(first), StringComparison.Ordinal);
    }

    [Fact]
    public async Task StartAsync_ProgramThatIsNoBrowser_SaysWhichAndWhatToDo()
    {
        string path = OperatingSystem.IsWindows() ? Environment.GetEnvironmentVariable("COMSPEC")! : "/bin/false";

        string message = (await Assert.ThrowsAsync<HandoutException>(() => PdfPrinter.StartAsync(path, TestContext.Current.CancellationToken))).Message;

        Assert.Contains($"The browser {path} does not start", message, StringComparison.Ordinal);
        Assert.Contains("FLAPAERO_BROWSER", message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task PrintAsync_BrowserGone_SaysSo()
    {
        PdfPrinter gone = await printer.AnotherAsync();
        await gone.DisposeAsync();

        string message = (await Assert.ThrowsAsync<HandoutException>(() => PrintAsync(gone, Html))).Message;

        Assert.StartsWith("The browser ended while it was printing", message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/CreationDate (D:20261125154414+00'00') /ModDate (then)")]
    [InlineData("/CreationDate (D:20261125154414+00'00')")]
    public void Fix_DateMissingOrInAnotherForm_Refuses(string text)
    {
        string message = Assert.Throws<HandoutException>(() => PdfDates.Fix(Encoding.ASCII.GetBytes(text))).Message;

        Assert.Contains("/ModDate", message, StringComparison.Ordinal);
    }

    private static Task<byte[]> PrintAsync(PdfPrinter one, string html) => one.PrintAsync(html, Paper.A4, TestContext.Current.CancellationToken);

    private static string Letters(Page page) => string.Concat(page.Letters.Select(letter => letter.Value)).Replace(" ", "", StringComparison.Ordinal);
}
