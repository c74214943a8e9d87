using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>A school's rules in the words of a lesson: what prose says of them where it computes nothing.</summary>
public static class SchoolWords
{
    /// <summary>Format of a multiple of the stalling speed.</summary>
    internal const string OfAMultiple = "0.0##";

    /// <summary>What gusts add to the approach speed.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="gustFactor">Gust less mean wind.</param>
    /// <returns>The school's share of it, no more than the school's most.</returns>
    /// <exception cref="RefusedInputException">A gust factor in which nobody trains.</exception>
    public static Speed ForGusts(this Lesson lesson, Speed gustFactor)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return lesson.Rules.Additive(gustFactor);
    }

    /// <summary>The headwind that a landing is planned with.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="headwind">The headwind as reported; a tailwind is negative.</param>
    /// <returns>The rules' share of it.</returns>
    /// <exception cref="RefusedInputException">A wind that nobody lands in.</exception>
    public static Speed Planned(this Lesson lesson, Speed headwind)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return lesson.Rules.PlannedHeadwind(headwind);
    }

    /// <summary>The multiple of the stalling speed on final, flaps up, such as "1.3"; with full flap's behind it where that is another.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <returns>Words for a sentence.</returns>
    public static Words Multiples(this Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        (string up, string full) = (lesson.Aeroplane.WithFlapsUp().Multiple(), lesson.Aeroplane.WithFullFlap().Multiple());
        return up == full ? (Words)up : $"{up} (with full flap {full})";
    }

    /// <summary>Whether flaps up and full flap are flown at the same multiple of their stalling speeds.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <returns>Whether they are.</returns>
    public static bool HasOneMultiple(this Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return lesson.Aeroplane.WithFlapsUp().ReferenceMultiple == lesson.Aeroplane.WithFullFlap().ReferenceMultiple;
    }

    /// <summary>The multiple of the stalling speed on final of one flap setting, such as "1.3".</summary>
    /// <param name="configuration">The aeroplane as it flies.</param>
    /// <returns>The number in words.</returns>
    public static string Multiple(this Configuration configuration)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        return QuantityText.Of(configuration.ReferenceMultiple, OfAMultiple);
    }

    /// <summary>The share of the gust factor that is added, before "of it": "half", "all" or a share in per cent.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <returns>Words for a sentence.</returns>
    public static string GustShare(this Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return ShareOf(lesson.Rules);
    }

    /// <summary>The same before "gust factor": "half the", "all of the" or a share in per cent.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <returns>Words for a sentence.</returns>
    public static string GustShareOfThe(this Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return ShareOfThe(lesson.Rules);
    }

    internal static string ShareOf(BriefingRules rules) => rules.GustShare switch
    {
        0.5 => "half",
        0 => "none",
        1 => "all",
        double share => QuantityText.Of(share, "% 0"),
    };

    internal static string ShareOfThe(BriefingRules rules) => ShareOf(rules) is "half" ? "half the" : $"{ShareOf(rules)} of the";
}
