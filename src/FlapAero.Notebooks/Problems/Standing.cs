namespace FlapAero.Notebooks;

/// <summary>How an option is judged.</summary>
internal enum Standing
{
    /// <summary>It is not right.</summary>
    Wrong,

    /// <summary>Another is right, and this one is safe: it is accepted.</summary>
    Safe,

    /// <summary>It is right.</summary>
    Right,
}
