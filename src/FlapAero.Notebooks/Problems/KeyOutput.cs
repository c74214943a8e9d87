using System.Text.Json;

namespace FlapAero.Notebooks;

/// <summary>
/// What a check or a problem keeps from students, or what prose is as Markdown. It leaves a kernel as an output of its own type
/// and only where the kernel that makes the handouts asks for it: what students get is made of the other output, which does not
/// hold it.
/// </summary>
/// <param name="Html">The whole result as an instructor's notebook shows it.</param>
internal sealed record KeyOutput(string Html)
{
    /// <summary>The type of the output.</summary>
    public const string MimeType = "application/vnd.flapaero.key+json";

    /// <summary>The answer key; none of a check against a seal, nor of an answer that is no number.</summary>
    public AnswerKey? Key { get; init; }

    /// <summary>What a check found; none of a problem.</summary>
    public CheckOutcome? Outcome { get; init; }

    /// <summary>A check's verdict in words; empty of a problem.</summary>
    public string Words { get; init; } = "";

    /// <summary>Prose as Markdown with its numbers; empty of a check or a problem.</summary>
    public string Markdown { get; init; } = "";

    public string ToJson() => JsonSerializer.Serialize(this);

    public static KeyOutput Parse(string json) => JsonSerializer.Deserialize<KeyOutput>(json)!;
}
