using FlapAero.AeroplaneFiles;
using FlapAero.Files;
using FlapAero.Manuals;

namespace FlapAero.Schools;

/// <summary>From the file's tree to a school, value by value.</summary>
internal static class SchoolReader
{
    private const int LongestName = 80;
    private const int LongestLine = 200;
    private const int MostLessons = 100;

    private static readonly Dictionary<string, DisplayUnits> Systems = new(StringComparer.OrdinalIgnoreCase)
    {
        ["aviation"] = DisplayUnits.Aviation,
        ["aviation-kg"] = DisplayUnits.AviationKilograms,
        ["si"] = DisplayUnits.SI,
    };

    private static readonly Dictionary<string, SchoolPaper> Papers = new(StringComparer.OrdinalIgnoreCase)
    {
        ["a4"] = SchoolPaper.A4,
        ["letter"] = SchoolPaper.Letter,
    };

    public static School? Read(JsonItem tree, FaultList faults)
    {
        if (ManualPart.Of(tree, "", SchoolKeys.School, faults) is not { } root) return null;
        root.Part.Text("$schema");
        string? name = SchoolText.Line(root, "name", LongestName, faults);
        string? foot = SchoolText.Line(root, "footLine", LongestLine, faults);
        string? logo = Logo(root, faults);
        string? caution = SchoolText.Line(root, "caution", LongestLine, faults);
        DisplayUnits? units = root.Word("units", Systems);
        SchoolPaper? paper = root.Word("paper", Papers);
        IReadOnlyList<string> lessons = Lessons(root, faults);
        IReadOnlyList<SchoolAerodrome> aerodromes = new AerodromeReader(faults).Read(root);
        IReadOnlyList<SchoolDay> days = new DayReader(faults).Read(root);
        (BriefingRules rules, SchoolCircuit circuit) = new RulesReader(faults).Read(root);
        return name is null ? null : new School(name)
        {
            FootLine = foot ?? "",
            Logo = logo,
            Caution = caution ?? "",
            Units = units,
            Paper = paper,
            Lessons = lessons,
            Aerodromes = aerodromes,
            Days = days,
            Rules = rules,
            Circuit = circuit,
        };
    }

    /// <summary>A name that leads down from the file's folder, on every system alike.</summary>
    private static string? Logo(ManualPart root, FaultList faults)
    {
        if (root.Part.Text("logo") is not { } text || SchoolText.Line(root, "logo", LongestLine, faults) is not { } path) return null;
        bool isBelow = path.Split('/').All(step => step.Length > 0 && step.Trim(' ', '.').Length > 0)
            && !path.Any(c => c is '\\' or ':' or '*' or '?' or '"' or '<' or '>' or '|');
        if (isBelow) return path;
        faults.Add(
            text.Line, text.Place, $"{text.Written} is not read",
            "the logo lies in the folder of this file or below it: write its name, such as \"logo.svg\" or \"pictures/logo.png\"");
        return null;
    }

    private static List<string> Lessons(ManualPart root, FaultList faults)
    {
        List<string> lessons = [];
        IReadOnlyList<(JsonItem Item, string Place)> items = root.Part.List("lessons", 1, "one lesson or more") ?? [];
        foreach ((JsonItem item, string place) in items)
        {
            string? lesson = item switch
            {
                TextItem { Text: var text } when !string.IsNullOrWhiteSpace(text) && text.Length <= LongestName => text.Trim(),
                NumberItem { Digits: var digits } when digits.Length <= 3 && digits.All(char.IsAsciiDigit) => digits,
                _ => null,
            };
            if (lesson is null)
                faults.Add(item.Line, place, $"{item.Written} names no lesson", "write a lesson's number or its name, such as 7 or \"round-out-and-float\"");
            else if (lessons.Contains(lesson))
                faults.Add(item.Line, place, $"{PlainText.Quoted(lesson)} is named twice", "name each lesson once");
            else
                lessons.Add(lesson);
            if (lessons.Count <= MostLessons) continue;
            faults.Add(item.Line, place, "the list is too long", FormattableString.Invariant($"{MostLessons} lessons are the most"));
            break;
        }

        return lessons;
    }
}
