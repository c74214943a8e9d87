using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FlapAero.Handouts.NotebookForm;
using static System.FormattableString;

namespace FlapAero.Handouts.NewLessons;

/// <summary>Begins a lesson: a small whole one, kept in this assembly, under a title and a number of its own.</summary>
internal static partial class NewLesson
{
    public const int HighestNumber = 99;

    public const string AllowedTitle = "3 to 60 letters, digits, spaces and , . : ? ! ' ( ) -, beginning with a letter";

    /// <summary>Writes the notebook.</summary>
    /// <param name="folder">The folder of notebooks.</param>
    /// <param name="title">The lesson's title.</param>
    /// <param name="number">Its number; null for one more than the highest.</param>
    /// <returns>The path of the new file.</returns>
    /// <exception cref="BadTitleException">No lesson can have the title.</exception>
    /// <exception cref="HandoutException">The folder is missing or cannot be written, or the number or the name is taken; nothing was written.</exception>
    public static string Write(string folder, string title, int? number)
    {
        title = title.Trim();
        if (!Title().IsMatch(title))
            throw new BadTitleException($"The title is \"{title}\"; allowed are {AllowedTitle}.");
        if (!Directory.Exists(folder))
            throw new HandoutException($"The folder of notebooks {folder} does not exist; name one with --notebooks.");
        (int Number, string Slug, string File)[] taken = [.. Directory.GetFiles(folder, "*.ipynb").Select(file => FileName().Match(Path.GetFileName(file)))
            .Where(name => name.Success).Select(name => (int.Parse(name.Groups["number"].ValueSpan, CultureInfo.InvariantCulture), name.Groups["slug"].Value, name.Value))];
        int own = number ?? taken.Select(lesson => lesson.Number).DefaultIfEmpty(0).Max() + 1;
        string slug = CellIds.Slug(title);
        if (own > HighestNumber)
            throw new HandoutException($"The lessons go up to {HighestNumber}, the highest number there is; name a free one with --number.");
        if (taken.FirstOrDefault(lesson => lesson.Number == own) is { File: not null } same)
            throw new HandoutException(Invariant($"Lesson {own} is there already: {same.File}. Name a free number with --number, or leave it out."));
        if (taken.FirstOrDefault(lesson => lesson.Slug == slug) is { File: not null } namesake)
            throw new HandoutException($"A lesson of that name is there already: {namesake.File}. Give the new one a title of its own.");

        string name = Invariant($"{own:00}-{slug}.ipynb"), path = Path.Combine(folder, name);
        byte[] content = NotebookCheck.Of(name, System.Text.Encoding.UTF8.GetBytes(Text(title, own))).PutRight.ToArray();
        try
        {
            WholeFile.Write(path, content);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new HandoutException($"{path} cannot be written: {e.Message.ReplaceLineEndings(" ").TrimEnd('.')}. Nothing was written.", e);
        }
        return path;
    }

    /// <summary>The lesson that is kept here, under another title and number.</summary>
    private static string Text(string title, int number)
    {
        using Stream stream = typeof(NewLesson).Assembly.GetManifestResourceStream("new-lesson.ipynb")!;
        JsonObject notebook = JsonNode.Parse(stream)!.AsObject();
        JsonObject facts = notebook["metadata"]!["flapaero"]!.AsObject();
        (facts["lesson"], facts["title"]) = (number, title);
        JsonObject opening = StoredForm.CellsOf(notebook).First();
        HashSet<string> ids = [.. StoredForm.CellsOf(notebook).Select(cell => cell["id"]!.GetValue<string>())];
        opening["id"] = CellIds.Claim(title, ids);
        opening["metadata"]!["flapaero"]!["title"] = TitleOfOpening(title, notebook);
        string rest = StoredForm.TextOf(opening["source"])!;
        opening["source"] = $"# {title}{rest[rest.IndexOf('\n', StringComparison.Ordinal)..]}";
        return notebook.ToJsonString();
    }

    /// <summary>The lesson's title, unless another cell has it already.</summary>
    private static string TitleOfOpening(string title, JsonObject notebook) =>
        StoredForm.CellsOf(notebook).Skip(1).Any(cell => string.Equals(cell["metadata"]!["flapaero"]!["title"]!.GetValue<string>(), title, StringComparison.OrdinalIgnoreCase))
            ? "Opening" : title;

    [GeneratedRegex(@"^[A-Za-z][A-Za-z0-9 ,.:?!'()-]{1,58}[A-Za-z0-9.?!)]$", RegexOptions.CultureInvariant)]
    private static partial Regex Title();

    [GeneratedRegex(@"^(?<number>[0-9]{2})-(?<slug>[a-z0-9-]+)\.ipynb$", RegexOptions.CultureInvariant)]
    private static partial Regex FileName();
}
