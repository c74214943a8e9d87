using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace FlapAero.Handouts.Lessons;

/// <summary>A cell whose one marked number has another value: what a page shows of it, and what is run.</summary>
/// <param name="Text">The number as the notebook writes it.</param>
/// <param name="Source">The cell with this number.</param>
/// <param name="IsOwn">Whether it is the number that stands in the cell.</param>
internal sealed record ChangedNumber(string Text, string Source, bool IsOwn)
{
    private const int Fewest = 3, Most = 9;

    /// <summary>The cell with each value, rising.</summary>
    /// <param name="source">The cell; its first statement holds one number.</param>
    /// <param name="values">Numbers with spaces between them; the cell's own among them.</param>
    /// <param name="fault">Told what is wrong.</param>
    /// <returns>The cells; none where something is wrong.</returns>
    public static IReadOnlyList<ChangedNumber> All(string source, string values, Action<string> fault)
    {
        string[] texts = values.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        double[] numbers = [.. texts.Select(text => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) ? number : double.NaN)];
        if (numbers.Any(number => !double.IsFinite(number)) || numbers.Length is < Fewest or > Most || numbers.Zip(numbers.Skip(1)).Any(pair => pair.First >= pair.Second))
        {
            fault($"has the values \"{values}\"; needed are {Fewest} to {Most} rising numbers with spaces between them, such as \"0.7 0.8 0.9\".");
            return [];
        }
        LiteralExpressionSyntax[] literals = [.. CellNames.Parsed(source).Members.Take(1)
            .SelectMany(first => first.DescendantNodes().OfType<LiteralExpressionSyntax>()).Where(literal => literal.IsKind(SyntaxKind.NumericLiteralExpression))];
        if (literals.Length != 1)
        {
            fault($"has {literals.Length} numbers in its first statement; a cell to change has one there, the number that is changed.");
            return [];
        }
        double own = Convert.ToDouble(literals[0].Token.Value, CultureInfo.InvariantCulture);
        if (!numbers.Contains(own))
        {
            fault($"has the values \"{values}\", and its own number {literals[0].Token.Text} is not among them.");
            return [];
        }
        return [.. texts.Zip(numbers).Select(value => value.Second == own
            ? new ChangedNumber(value.First, source, true)
            : new ChangedNumber(value.First, source.Remove(literals[0].SpanStart, literals[0].Span.Length).Insert(literals[0].SpanStart, value.First), false))];
    }
}
