using System.Globalization;
using FlapAero.Charts;
using FlapAero.Handouts.Cache;

namespace FlapAero.Handouts.Schools;

/// <summary>What a school puts on each page: name, logo, addition to the caution, line for the foot. Immutable.</summary>
internal sealed class SchoolMarks
{
    private readonly string? _logo;

    private SchoolMarks(School school, string? logo) => (School, _logo) = (school, logo);

    public School School { get; }

    /// <summary>The marks of a school, with its logo where it has one.</summary>
    /// <param name="school">The school.</param>
    /// <param name="file">The school's file, below whose folder the logo lies.</param>
    /// <exception cref="HandoutException">The logo is refused.</exception>
    public static SchoolMarks Of(School school, string file) => new(
        school, school.Logo is { } logo ? SchoolLogo.Read(Path.GetDirectoryName(Path.GetFullPath(file))!, logo) : null);

    /// <summary>The marks of the school in a file.</summary>
    /// <exception cref="HandoutException">The file or the logo is refused.</exception>
    public static SchoolMarks Read(string file)
    {
        try
        {
            return Of(School.Read(file), file);
        }
        catch (AeroplaneFileException e)
        {
            throw new HandoutException(e.Message, e);
        }
    }

    /// <summary>Name and logo, for the head of a page.</summary>
    public string HeadHtml()
    {
        string logo = _logo is null ? "" : $"<img class=\"logo\" src=\"{_logo}\" alt=\"\"> ";
        return $"<p class=\"school-name\">{logo}{HtmlText.Escape(School.Name)}</p>";
    }

    /// <summary>The logo alone, for a sheet that names the school itself.</summary>
    public string LogoHtml() => _logo is null ? "" : $"<p class=\"school-name\"><img class=\"logo\" src=\"{_logo}\" alt=\"\"></p>\n";

    /// <summary>What is added to the caution; empty where nothing is.</summary>
    public string CautionHtml() =>
        School.Caution.Length == 0 ? "" : $"<p><strong>{HtmlText.Escape(School.Name)}:</strong> {HtmlText.Escape(School.Caution)}</p>";

    /// <summary>The line for the foot; empty where there is none.</summary>
    public string FootHtml() => School.FootLine.Length == 0 ? "" : $"<p class=\"school-foot\">{HtmlText.Escape(School.FootLine)}</p>\n";

    /// <summary>The foot's line and the addition to the caution at the head of every sheet of paper; empty where there is neither.</summary>
    public string PaperCss()
    {
        string[] words = [School.FootLine, School.Caution.Length > 0 ? $"{School.Name}: {School.Caution}" : ""];
        string text = string.Join(" ", words.Where(word => word.Length > 0));
        return text.Length == 0 ? "" : $" @page {{ @top-left {{ content: \"{InCss(text)}\"; font: 8.5pt system-ui, sans-serif; }} }}";
    }

    /// <summary>The foot's line in the margin above a briefing, whose own foot is the caution's; empty where there is none.</summary>
    public string MarginCss() => School.FootLine.Length == 0 ? ""
        : $"@page {{ @top-left {{ content: \"{InCss(School.FootLine)}\"; font: 9pt Inter, sans-serif; }} }}";

    /// <summary>A text inside quotes of a style: all but letters, digits and spaces by number, so that nothing ends the quotes or the style.</summary>
    private static string InCss(string text) => string.Concat(text.EnumerateRunes().Select(rune =>
        rune.IsAscii && (char.IsAsciiLetterOrDigit((char)rune.Value) || rune.Value == ' ') ? rune.ToString()
        : string.Create(CultureInfo.InvariantCulture, $"\\{rune.Value:x} ")));

    /// <summary>All that pages show of the school, as a key.</summary>
    public string Key() => new ContentKey("school").With(School.Name).With(School.FootLine).With(School.Caution).With(_logo ?? "").ToString();
}
