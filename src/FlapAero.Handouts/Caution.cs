namespace FlapAero.Handouts;

/// <summary>The words that every page carries, because a pilot could be hurt by a number read off one.</summary>
public static class Caution
{
    /// <summary>The whole caution, as the head of each page shows it.</summary>
    public const string Text =
        "A training aid, with an invented aeroplane. Never fly by its numbers: the aeroplane's approved manual, " +
        "the local rules and a qualified instructor decide.";

    /// <summary>The caution in one breath, for the foot of a page and of each printed sheet.</summary>
    public const string Short = "A training aid, with an invented aeroplane: never fly by its numbers.";
}
