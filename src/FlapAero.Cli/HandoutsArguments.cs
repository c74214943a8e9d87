using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using FlapAero.Handouts;

namespace FlapAero.Cli;

/// <summary>The options of <c>flapaero handouts</c>: what each is called, takes and means.</summary>
internal sealed class HandoutsArguments
{
    private const string AllEditions = "all";

    private const int LongestCellSeconds = 3600;

    private static readonly string[] EditionNames = [.. Enum.GetValues<Edition>().Select(NameOf), AllEditions];

    public Option<string[]> Lessons { get; } = new("--lesson")
    {
        Description = "Only these lessons, each by its number, its name or its file. Without it: all.",
        HelpName = "NAME",
        AllowMultipleArgumentsPerToken = true,
    };

    public Option<string[]> Editions { get; } = new("--edition")
    {
        Description = "Only these editions: student (page without answers), instructor (page with everything), key (the answers), "
            + "sheets (problem sheets and their keys), notebook (the student's .ipynb), all. Without it: all.",
        HelpName = string.Join('|', EditionNames),
        AllowMultipleArgumentsPerToken = true,
    };

    public Option<int> Seed { get; } = new("--seed")
    {
        Description = "The number that problems are drawn from: the same number, the same problems, on every machine.",
        HelpName = "N",
        DefaultValueFactory = _ => 1,
    };

    public Option<int> Sheets { get; } = new("--sheets")
    {
        Description = "How many different problem sheets of each lesson, with a key each. None has the problems of the lesson's page.",
        HelpName = "N",
        DefaultValueFactory = _ => 1,
    };

    public Option<string?> Aeroplane { get; } = new("--aeroplane")
    {
        Description = "The file of the aeroplane that the lessons are about. Without it: the demo aeroplane.",
        HelpName = "FILE",
    };

    public Option<string?> School { get; } = new("--school")
    {
        Description = "The school's file: its name and marks, which lessons, units and paper; docs/school.md. Without it: school.json "
            + "among the notebooks or in the folder above them, if there is one.",
        HelpName = "FILE",
    };

    public Option<string> Units { get; } = new("--units")
    {
        Description = "The units that values are shown in: aviation (kt, ft, lb), aviation-kg (kt, ft, kg) or si (m/s, m, kg).",
        HelpName = "aviation|aviation-kg|si",
        DefaultValueFactory = _ => "aviation",
    };

    public Option<string> Paper { get; } = new("--paper")
    {
        Description = "The paper that pages are printed on: a4 or letter.",
        HelpName = "a4|letter",
        DefaultValueFactory = _ => "a4",
    };

    public Option<bool> Pdf { get; } = new("--pdf")
    {
        Description = "Also a PDF of each page, through an installed Chromium, Chrome or Edge.",
    };

    public Option<bool> Engine { get; } = new("--engine")
    {
        Description = "Also the folder engine: a page of each lesson in which its cells run, with nothing installed. Builds the engine first, once.",
    };

    public Option<string?> Out { get; } = new("--out")
    {
        Description = "The folder for the pages. Without it: artifacts/handouts in the repository.",
        HelpName = "DIR",
    };

    public Option<bool> Watch { get; } = new("--watch")
    {
        Description = "Stay, and make the pages of a lesson anew whenever its notebook is saved; an open page then loads itself anew. Ctrl+C ends it.",
    };

    public Option<bool> Fresh { get; } = new("--fresh")
    {
        Description = "Run every lesson and print every page anew, also where nothing has changed. The files are the same.",
    };

    public Option<string?> Notebooks { get; } = new("--notebooks")
    {
        Description = "The folder of the lessons. Without it: notebooks in the repository.",
        HelpName = "DIR",
    };

    public Option<int> TimeLimit { get; } = new("--time-limit")
    {
        Description = "The seconds that a cell may run before it counts as endless.",
        HelpName = "SECONDS",
        DefaultValueFactory = _ => 60,
    };

    public Option<int> Processes { get; } = new("--processes")
    {
        Description = "How many lessons run side by side. Without it: as many as there are cores.",
        HelpName = "N",
        DefaultValueFactory = _ => Environment.ProcessorCount,
    };

    public HandoutsArguments()
    {
        AllowWhole(Seed, 0, int.MaxValue);
        AllowWhole(Sheets, 1, HandoutOptions.MostSheets);
        AllowWhole(TimeLimit, 1, LongestCellSeconds);
        AllowWhole(Processes, 1, 64);
        PathText.NotEmpty(Aeroplane, School, Out, Notebooks);
        AllowNames(Editions, EditionNames);
        AllowNames(Units, ["aviation", "aviation-kg", "si"]);
        AllowNames(Paper, ["a4", "letter"]);
    }

    public void AddTo(Command command)
    {
        foreach (Option option in new Option[] { Lessons, Editions, Seed, Sheets, Aeroplane, School, Units, Paper, Pdf, Engine, Out, Fresh, Watch, Notebooks, TimeLimit, Processes })
            command.Add(option);
        command.Validators.Add(result =>
        {
            if (result.GetValue(Watch) && (result.GetValue(Pdf) || result.GetValue(Engine) || result.GetValue(Fresh)))
                result.AddError("--watch is given with --pdf, --engine or --fresh; allowed is it without them: a page is to be there at once.");
        });
    }

    public HashSet<Edition> EditionsIn(ParseResult parsed)
    {
        string[] names = parsed.GetValue(Editions) ?? [];
        return [.. Enum.GetValues<Edition>().Where(edition => names.Length == 0 || names.Contains(AllEditions) || names.Contains(NameOf(edition))
            || edition == Edition.Notebook && parsed.GetValue(Engine))];
    }

    /// <summary>The units as named; as the school's file has them where none are named.</summary>
    public DisplayUnits UnitsIn(ParseResult parsed, School? school) =>
        parsed.GetResult(Units) is { Implicit: true } && school?.Units is { } units ? units : parsed.GetValue(Units) switch
        {
            "si" => DisplayUnits.SI,
            "aviation-kg" => DisplayUnits.AviationKilograms,
            _ => DisplayUnits.Aviation,
        };

    /// <summary>The paper as named; as the school's file has it where none is named.</summary>
    public Handouts.Printing.Paper PaperIn(ParseResult parsed, School? school)
    {
        bool isLetter = parsed.GetResult(Paper) is { Implicit: true } && school?.Paper is { } paper
            ? paper == SchoolPaper.Letter : parsed.GetValue(Paper) == "letter";
        return isLetter ? Handouts.Printing.Paper.Letter : Handouts.Printing.Paper.A4;
    }

    private static string NameOf(Edition edition) => edition.ToString().ToLowerInvariant();

    private static void AllowWhole(Option<int> option, int low, int high) => option.CustomParser = result =>
    {
        string text = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) && value >= low && value <= high)
            return value;
        result.AddError(string.Create(CultureInfo.InvariantCulture, $"{option.Name} is \"{text}\"; allowed is a whole number from {low} to {high}."));
        return low;
    };

    private static void AllowNames(Option option, string[] names) => option.Validators.Add(result =>
    {
        foreach (Token token in result.Tokens.Where(token => !names.Contains(token.Value)))
            result.AddError($"{option.Name} is \"{token.Value}\"; allowed are {string.Join(", ", names)}.");
    });
}
