using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlapAero.Handouts.Lessons;
using FlapAero.Handouts.Rules;

namespace FlapAero.Handouts.NotebookForm;

/// <summary>
/// Says what about a notebook's file does not belong in the repository, and holds the file put right: what a person wrote
/// stays to the letter, what an editor or a run left is gone, and the rest is laid out as the repository stores notebooks.
/// </summary>
public sealed class NotebookCheck
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private static readonly JsonDocumentOptions Strict = new() { AllowDuplicateProperties = false, MaxDepth = 512 };

    private readonly byte[] _putRight;

    private NotebookCheck(IReadOnlyList<NotebookFault> faults, byte[] putRight)
    {
        Faults = faults;
        _putRight = putRight;
    }

    /// <summary>All faults, those of the file first, then cell by cell, then those of the lesson.</summary>
    public IReadOnlyList<NotebookFault> Faults { get; }

    /// <summary>Whether <see cref="PutRight"/> differs from what was read.</summary>
    public bool HasBetter { get; private init; }

    /// <summary>The file as it should be stored; what was read where it could not be understood.</summary>
    public ReadOnlySpan<byte> PutRight => _putRight;

    /// <summary>Checks one notebook.</summary>
    /// <param name="fileName">The file's name, <c>NN-slug.ipynb</c>, for the messages.</param>
    /// <param name="content">The file's bytes.</param>
    public static NotebookCheck Of(string fileName, byte[] content)
    {
        ArgumentException.ThrowIfNullOrEmpty(fileName);
        ArgumentNullException.ThrowIfNull(content);
        try
        {
            return Of(fileName, content, StrictUtf8.GetString(content));
        }
        catch (DecoderFallbackException)
        {
            return Unreadable("is not UTF-8, so nothing more is said about it");
        }
        catch (JsonException e)
        {
            return Unreadable(string.Create(CultureInfo.InvariantCulture, $"is not valid JSON at line {e.LineNumber + 1}; a notebook is nbformat 4.5 JSON without doubled names"));
        }
        catch (InvalidOperationException)
        {
            return Unreadable("holds half of a surrogate pair, which is no character and cannot be stored as UTF-8");
        }

        NotebookCheck Unreadable(string words) => new([new NotebookFault($"{fileName} {words}.", CanBePutRight: false)], content);
    }

    private static NotebookCheck Of(string fileName, byte[] content, string text)
    {
        var faults = new List<NotebookFault>();
        string json = text.TrimStart('\uFEFF');
        if (JsonNode.Parse(json, documentOptions: Strict) is not JsonObject notebook)
            return new NotebookCheck([new NotebookFault($"{fileName} is not a JSON object; a notebook is nbformat 4.5.", CanBePutRight: false)], content);

        var asFound = (JsonObject)notebook.DeepClone();
        StoredForm.Arrange(asFound);
        if (LayoutFault(text, CanonicalJson.Write(asFound)) is { } layout)
            faults.Add(new NotebookFault($"{fileName} {layout}", CanBePutRight: true) { Kind = "layout" });

        var repair = new NotebookRepair(fileName);
        repair.Mend(notebook);
        faults.AddRange(repair.Faults);
        StoredForm.Arrange(notebook);
        string better = CanonicalJson.Write(notebook);
        faults.AddRange(LessonFaults(fileName, better));
        return new NotebookCheck(faults, StrictUtf8.GetBytes(better)) { HasBetter = better != text };
    }

    private static string? LayoutFault(string text, string stored)
    {
        if (text.StartsWith('\uFEFF'))
            return "starts with a byte order mark; allowed is UTF-8 without one.";
        if (text.Contains('\r', StringComparison.Ordinal))
            return "has line ends other than LF.";
        return text == stored ? null
            : "is laid out otherwise than notebooks are stored here: one space a level, names in a fixed order, sources by lines, one line end at the end.";
    }

    /// <summary>What the reader of lessons still refuses once the file is put right, and every rule of a lesson: no one but the author can mend that.</summary>
    private static IEnumerable<NotebookFault> LessonFaults(string fileName, string better)
    {
        var faults = new List<string>();
        if (NotebookReader.ReadWithFaults(fileName, better, faults) is { } lesson)
            faults.AddRange(LessonRules.Faults(lesson).Select(fault => fault.Words).Concat(TeachingPlan.Faults(lesson)));
        return faults.Select(words => new NotebookFault(words, CanBePutRight: false));
    }
}
