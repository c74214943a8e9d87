namespace FlapAero.Notebooks;

/// <summary>The words that everything made here carries, because a pilot could be hurt by a number read off it.</summary>
public static class Caution
{
    /// <summary>The whole caution, as the head of each page and each lesson's first cell show it.</summary>
    public const string Text =
        "A training aid, with an invented aeroplane. Never fly by its numbers: the aeroplane's approved manual, " +
        "the local rules and a qualified instructor decide.";

    /// <summary>The caution in one breath, for the foot of a page and of each printed sheet.</summary>
    public const string Short = "A training aid, with an invented aeroplane: never fly by its numbers.";

    /// <summary>What a briefing says of itself: its aeroplane may be a real one.</summary>
    public const string OfABriefing =
        "Training aid: a model's numbers. The aeroplane's approved manual, the local rules and a qualified instructor decide.";

    /// <summary>What the command's help says.</summary>
    public const string OfTheCommand = "A training aid: the approved manual, local rules and a qualified instructor decide about a flight.";
}
