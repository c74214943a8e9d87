using System.Globalization;
using System.Runtime.CompilerServices;
using FlapAero.Charts;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>
/// What a lesson's cells call: prose with numbers, tables, predictions against results, checks and problems. Immutable.
/// </summary>
/// <example><code>var lesson = Lesson.Begin();</code></example>
public sealed partial class Lesson
{
    /// <summary>The first code cell of every lesson, the same in each: from these two lines all that follows has its means.</summary>
    public const string SetupCell = """
        #r "../artifacts/lessons/FlapAero.Notebooks.dll"
        using FlapAero; using FlapAero.Charts; using FlapAero.Notebooks; using UnitsNet; var lesson = Lesson.Begin(); lesson
        """;

    /// <summary>How a lesson in the project's folder names this assembly: the first line of <see cref="SetupCell"/>.</summary>
    internal const string ProjectReference = "#r \"../artifacts/lessons/FlapAero.Notebooks.dll\"";

    /// <summary>
    /// How a student's copy names it, which lies anywhere: the project's kernel answers for this package, any other
    /// finds it in a feed.
    /// </summary>
    internal const string PackageReference = "#r \"nuget: FlapAero.Notebooks, *-*\"";

    private Lesson(int seed, Aeroplane aeroplane, DisplayUnits units, School? school)
    {
        Seed = seed;
        Aeroplane = aeroplane;
        Units = units;
        School = school;
    }

    /// <summary>The seed from which the lesson's problems draw their numbers.</summary>
    public int Seed { get; }

    /// <summary>The school by whose rules the lesson is flown; none where nobody named one and none lies beside the notebook.</summary>
    public School? School { get; }

    /// <summary>The rules by which the lesson is flown: the school's, or the usual ones.</summary>
    public BriefingRules Rules => Aeroplane.Rules;

    /// <summary>The aeroplane that the lesson is about, flown by <see cref="Rules"/>.</summary>
    public Aeroplane Aeroplane { get; }

    /// <summary>The units in which the lesson shows its quantities.</summary>
    public DisplayUnits Units { get; }

    /// <summary>Whether the aeroplane has one flap setting only, so that with flaps and without are the same.</summary>
    public bool HasOneSetting => Aeroplane.FlapSettings.Count == 1;

    /// <summary>A sentence, after a space, that says so; empty where there are more settings.</summary>
    public string OneSetting => HasOneSetting ? " It has one flap setting only: up and full are the same here." : "";

    /// <summary>Begins a lesson: makes the kernel show figures, quantities and results; may be called any number of times.</summary>
    /// <param name="seed">The seed of the problems.</param>
    /// <param name="aeroplane">The aeroplane; <see cref="DemoAeroplanes.TrainerH4"/> where none is given.</param>
    /// <param name="units">The units in which quantities are shown; the school's, or aviation's, where none are given.</param>
    /// <param name="school">The school; where none is given, the one whose file lies beside the notebook or in the folder above it.</param>
    /// <returns>The lesson.</returns>
    /// <exception cref="AeroplaneFileException">The school's file beside the notebook makes no school; all its faults are told.</exception>
    public static Lesson Begin(int seed = 1, Aeroplane? aeroplane = null, DisplayUnits? units = null, School? school = null)
    {
        SharedFSharpCore.Use();
        school ??= SchoolBeside.Find();
        DisplayUnits shown = units ?? school?.Units ?? DisplayUnits.Aviation;
        Formatters.Register(shown);
        Aeroplane flown = aeroplane ?? DemoAeroplanes.TrainerH4;
        return new Lesson(seed, school is null ? flown : flown.FlownBy(school.Rules), shown, school);
    }

    /// <summary>The lesson as the value of a cell: a line that says what it is about, and what draws figures in a notebook.</summary>
    /// <returns>HTML.</returns>
    public string ToHtml() => $"<p class=\"lesson-ready\">{HtmlText.Escape(ToString())}</p>{NotebookStart.Html}";

    /// <summary>That the lesson is ready, its aeroplane and its seed.</summary>
    /// <returns>A sentence.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"Lesson ready: {Aeroplane.Name}, seed {Seed}.");

    /// <summary>Prose with values in it.</summary>
    /// <param name="markdown">Markdown as an interpolated string; maths between dollar signs (a brace in maths is written twice).</param>
    /// <returns>The prose.</returns>
    public Said Say(Words markdown)
    {
        ArgumentNullException.ThrowIfNull(markdown);
        return new Said(markdown.In(Units));
    }

    /// <summary>A table: a row an element, a column a function of it.</summary>
    /// <typeparam name="T">What a row shows.</typeparam>
    /// <param name="caption">What the table shows.</param>
    /// <param name="rows">The elements.</param>
    /// <param name="columns">Heading and value of each column; the first heads the row.</param>
    /// <returns>The table.</returns>
    /// <exception cref="RefusedInputException">There are no rows or no columns.</exception>
    public Table Table<T>(string caption, IEnumerable<T> rows, params (string Heading, Func<T, object?> Value)[] columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        return Table(caption, rows, [.. columns.Select(c => (c.Heading, c.Value, ""))]);
    }

    /// <summary>A table: a row an element, a column a function of it with a format.</summary>
    /// <typeparam name="T">What a row shows.</typeparam>
    /// <param name="caption">What the table shows.</param>
    /// <param name="rows">The elements.</param>
    /// <param name="columns">Heading, value and format (see <see cref="QuantityText"/>; may be empty) of each column.</param>
    /// <returns>The table.</returns>
    /// <exception cref="RefusedInputException">There are no rows or no columns, or a format is not known.</exception>
    public Table Table<T>(string caption, IEnumerable<T> rows, params (string Heading, Func<T, object?> Value, string Format)[] columns)
    {
        Require.Words(caption, "caption of the table");
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(columns);
        return new Table(caption, [.. columns.Select(c => c.Heading)],
            [.. rows.Select(row => (IReadOnlyList<string>)[.. columns.Select(c => Words.Of(c.Value(row), c.Format.Length == 0 ? null : c.Format, Units))])]);
    }

    /// <summary>A table: a row an element, whose values one function gives.</summary>
    /// <typeparam name="T">What a row shows.</typeparam>
    /// <param name="caption">What the table shows.</param>
    /// <param name="rows">The elements.</param>
    /// <param name="headings">A heading a column; after a colon the column's format, such as "length:ft 0" (see <see cref="QuantityText"/>).</param>
    /// <param name="row">An element's values, one for each heading; the first heads the row.</param>
    /// <returns>The table.</returns>
    /// <exception cref="RefusedInputException">
    /// There are no rows or no columns, a row has not a value for each column, or a format is not known.
    /// </exception>
    public Table Table<T>(string caption, IEnumerable<T> rows, IReadOnlyList<string> headings, Func<T, object?[]> row)
    {
        Require.Words(caption, "caption of the table");
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(headings);
        ArgumentNullException.ThrowIfNull(row);
        string[][] columns = [.. headings.Select(heading => heading.Split(':', 2))];
        return new Table(caption, [.. columns.Select(column => column[0])],
            [.. rows.Select(one => (IReadOnlyList<string>)[.. row(one).Select((value, i) => Words.Of(value, columns.ElementAtOrDefault(i)?.ElementAtOrDefault(1), Units))])]);
    }

    /// <summary>A table given by its headings and its rows of values.</summary>
    /// <param name="caption">What the table shows.</param>
    /// <param name="headings">A heading a column.</param>
    /// <param name="rows">A value for each column; the first heads the row.</param>
    /// <returns>The table.</returns>
    /// <exception cref="RefusedInputException">
    /// There are no rows or no columns, or a row has not a value for each column.
    /// </exception>
    public Table Table(string caption, IReadOnlyList<string> headings, params object?[][] rows)
    {
        Require.Words(caption, "caption of the table");
        ArgumentNullException.ThrowIfNull(headings);
        ArgumentNullException.ThrowIfNull(rows);
        return new Table(caption, headings, [.. rows.Select(row => (IReadOnlyList<string>)[.. row.Select(value => Words.Of(value, null, Units))])]);
    }

    /// <summary>A prediction against the result, in the prediction's unit or what stands for it in the lesson's units.</summary>
    /// <typeparam name="T">The kind of quantity.</typeparam>
    /// <param name="what">What was predicted.</param>
    /// <param name="guess">The prediction; zero where none was written down.</param>
    /// <param name="actual">The result.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>By how much and which way the prediction was off.</returns>
    /// <exception cref="RefusedInputException">The result is not finite.</exception>
    public Compared Compare<T>(string what, T guess, T actual, [CallerArgumentExpression(nameof(guess))] string prediction = "") where T : IQuantity =>
        Comparison.Of(what, guess, actual, prediction, Units);

    /// <summary>A prediction of a plain number against the result.</summary>
    /// <param name="what">What was predicted.</param>
    /// <param name="guess">The prediction; zero where none was written down.</param>
    /// <param name="actual">The result.</param>
    /// <param name="prediction">The prediction's name in the lesson, which the compiler gives.</param>
    /// <returns>By how much and which way the prediction was off.</returns>
    /// <exception cref="RefusedInputException">The result is not finite.</exception>
    public Compared Compare(string what, double guess, double actual, [CallerArgumentExpression(nameof(guess))] string prediction = "")
    {
        Scalar result = FiniteNumber.Of(actual, $"The result of \"{what}\"");
        return double.IsFinite(guess) ? Comparison.Of(what, Scalar.FromAmount(guess), result, prediction, Units) : Comparison.OfNoNumber(what, result, prediction);
    }
}
