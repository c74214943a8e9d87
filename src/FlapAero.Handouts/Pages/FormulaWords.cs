using System.Text;
using AngleSharp.Dom;

namespace FlapAero.Handouts.Pages;

/// <summary>A formula as a person says it, from its MathML: what a reader hears who does not see it.</summary>
internal static class FormulaWords
{
    private const string Applied = "\u2061";

    /// <summary>A piece of a formula that can be said. What has more than one part needs a pause after it, and a sum is said as one quantity.</summary>
    private sealed record Said(string Words, bool HasParts = false, bool IsSum = false)
    {
        public string AsOne => IsSum ? "the quantity " + Words : Words;
    }

    /// <summary>The words; a symbol that stands alone keeps its letters, for the text round it says what it is.</summary>
    public static string Of(IElement math)
    {
        List<IElement> signs = Flat(math);
        if (signs.Count == 1 && SymbolOf(signs[0]) is { } symbol)
            return Spelt(symbol);
        return Row(signs).Words;
    }

    /// <summary>The signs of a row without what only groups them or moves them apart; a bracketed group stays together.</summary>
    private static List<IElement> Flat(IElement element)
    {
        var signs = new List<IElement>();
        foreach (IElement child in element.Children)
            if (child.LocalName is "mrow" or "mstyle" or "mpadded" or "math" or "semantics")
                signs.AddRange(Flat(child));
            else if (child.LocalName is not ("mspace" or "mphantom" or "annotation") && Text(child) != Applied)
                signs.Add(child);
        return signs;
    }

    private static Said Row(List<IElement> signs)
    {
        var words = new StringBuilder();
        bool isSum = false, isAfterOperand = false, pauses = false;
        int operands = 0;
        for (int at = 0; at < signs.Count; at++)
        {
            string sign = Text(signs[at]);
            if (Joining(sign, isAfterOperand) is { } joining)
            {
                isSum |= SymbolNames.IsSum(sign) && isAfterOperand;
                Say(joining);
                isAfterOperand = false;
                continue;
            }
            if (Opening(signs, at) is { } opening)
            {
                if (isAfterOperand)
                    Say("times");
                Say(opening);
                isAfterOperand = false;
                continue;
            }
            Said operand = Operand(signs, ref at);
            if (isAfterOperand)
                Say("times");
            Say(operand.AsOne);
            pauses = operand.HasParts;
            isAfterOperand = true;
            operands++;
        }
        return new Said(words.ToString(), operands > 1 || pauses, isSum);

        void Say(string what)
        {
            if (what == ",")
                pauses = true;
            else if (words.Length > 0)
                words.Append(pauses ? ", " : " ").Append(what);
            else
                words.Append(what);
            if (what != ",")
                pauses = false;
        }
    }

    /// <summary>What stands between two operands.</summary>
    private static string? Joining(string sign, bool isAfterOperand) => sign switch
    {
        "," or ";" => ",",
        "−" or "-" when !isAfterOperand => "minus",
        _ => SymbolNames.Relation(sign) ?? SymbolNames.Operator(sign),
    };

    /// <summary>What takes the operand after it to itself: a function, a difference, a differential.</summary>
    private static string? Opening(List<IElement> signs, int at)
    {
        if (at + 1 >= signs.Count || signs[at].LocalName is not ("mi" or "mo"))
            return null;
        return Text(signs[at]) switch
        {
            "Δ" => "the change in",
            "d" when signs[at + 1].LocalName is "mi" or "msub" => "a small change in",
            string name => SymbolNames.Function(name),
        };
    }

    private static Said Operand(List<IElement> signs, ref int at)
    {
        IElement sign = signs[at];
        if (!IsBracket(sign, "([{"))
            return One(sign);
        int depth = 1, first = at + 1;
        while (depth > 0 && ++at < signs.Count)
            depth += IsBracket(signs[at], "([{") ? 1 : IsBracket(signs[at], ")]}") ? -1 : 0;
        List<IElement> inside = signs[first..Math.Min(at, signs.Count)];
        bool isMany = inside.Count > 1 || inside.Exists(part => part.LocalName == "mfrac");
        return Row(inside) with { HasParts = isMany, IsSum = isMany };
    }

    private static bool IsBracket(IElement sign, string brackets) =>
        sign.LocalName is "mo" && Text(sign) is { Length: 1 } text && brackets.Contains(text, StringComparison.Ordinal);

    private static Said One(IElement element)
    {
        if (SymbolOf(element) is { } symbol)
            return new Said(SymbolNames.Of(symbol) ?? Spelt(symbol));
        return element.LocalName switch
        {
            "mfrac" => Fraction(Inside(element.Children[0]), Inside(element.Children[1])),
            "msqrt" => Root("the square root of ", Row(Flat(element))),
            "mroot" => Root($"the root {Part(element, 1).Words} of ", Part(element, 0)),
            "msup" => Raised(Part(element, 0), Part(element, 1)),
            "msub" or "munder" => new Said($"{Part(element, 0).Words} {Part(element, 1).Words}"),
            "msubsup" or "munderover" => Raised(
                SymbolOf(element.Children[0], element.Children[1]) is { } raised ? new Said(SymbolNames.Of(raised) ?? Spelt(raised)) : Part(element, 0), Part(element, 2)),
            "mover" => new Said($"{Part(element, 0).Words} {(Text(element.Children[1]) is "¯" or "‾" ? "mean" : Part(element, 1).Words)}"),
            "mo" when Text(element) is "…" or "⋯" => new Said("and so on"),
            _ when element.ChildElementCount > 0 => Row(Flat(element)),
            _ => new Said(SymbolNames.Letter(Text(element))),
        };
    }

    private static Said Root(string root, Said inside) => new(root + inside.Words, inside.HasParts);

    private static Said Fraction(List<IElement> above, List<IElement> below)
    {
        Said top = Row(above), bottom = Row(below);
        if (top.Words == "1" && bottom.Words == "2")
            return new Said("one half");
        if (above.Count > 1 && below.Count > 1 && Text(above[0]) == "d" && Text(below[0]) == "d")
            return new Said($"the rate of change of {Row(above[1..]).Words} with {(Text(below[1]) == "t" ? "time" : Row(below[1..]).Words)}");
        return new Said($"{top.AsOne}{(top.HasParts ? "," : "")} over {bottom.AsOne}", top.HasParts || bottom.HasParts);
    }

    private static Said Raised(Said what, Said power)
    {
        string raised = power.Words switch
        {
            "2" => "squared",
            "3" => "cubed",
            "degrees" or "prime" => power.Words,
            _ => "to the power " + power.AsOne,
        };
        return new Said($"{what.AsOne}{(what.HasParts ? "," : "")} {raised}", what.HasParts);
    }

    private static Said Part(IElement element, int which) => Row(Inside(element.Children[which]));

    private static List<IElement> Inside(IElement element) =>
        element.LocalName is "mrow" or "mstyle" or "mpadded" ? Flat(element) : [element];

    /// <summary>A symbol and its subscripts, a space between each, as "C L max"; null for what is no single symbol.</summary>
    private static string? SymbolOf(IElement element) => element.LocalName switch
    {
        "mi" => Text(element),
        "msub" => SymbolOf(element.Children[0], element.Children[1]),
        _ => null,
    };

    private static string? SymbolOf(IElement letter, IElement below)
    {
        List<IElement> signs = Inside(letter);
        if (signs.Count != 1 || signs[0].LocalName != "mi")
            return null;
        return string.Join(' ', Inside(below).Select(Text).Where(text => text.Any(char.IsLetterOrDigit)).Prepend(Text(signs[0])));
    }

    private static string Spelt(string symbol) => string.Join(' ', symbol.Split(' ').Select(SymbolNames.Letter));

    private static string Text(IElement element) => element.TextContent.Replace('\u00a0', ' ').Trim();
}
