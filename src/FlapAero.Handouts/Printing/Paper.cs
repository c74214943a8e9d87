namespace FlapAero.Handouts.Printing;

/// <summary>The paper that pages are printed on.</summary>
public enum Paper
{
    /// <summary>210 mm × 297 mm (ISO 216).</summary>
    A4,

    /// <summary>8.5 in × 11 in, as used in North America.</summary>
    Letter,
}
