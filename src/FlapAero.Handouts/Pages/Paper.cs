namespace FlapAero.Handouts.Pages;

/// <summary>What pages are printed on.</summary>
internal enum Paper
{
    /// <summary>210 mm by 297 mm.</summary>
    A4,

    /// <summary>8.5 in by 11 in.</summary>
    Letter,
}
