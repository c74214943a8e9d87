namespace FlapAero.Charts;

/// <summary>Labels in which symbols have subscripts, such as <c>V_S</c>, for a page and for a terminal.</summary>
public static class LabelText
{
    /// <summary>The label for a page: symbols in italics, subscripts lowered, everything else escaped.</summary>
    /// <param name="label">For example <c>stall speed V_S</c>.</param>
    /// <returns>HTML.</returns>
    public static string Html(string label) => Notation.ToHtml(Notation.Parse(label));

    /// <summary>The label in plain text.</summary>
    /// <param name="label">For example <c>stall speed V_S</c>.</param>
    /// <returns>For example <c>stall speed VS</c>.</returns>
    public static string Plain(string label) => Notation.ToPlain(Notation.Parse(label));
}
