using System.CommandLine;
using System.Globalization;
using FlapAero.Files;
using FlapAero.Handouts.NotebookForm;
using nietras.SeparatedValues;

namespace FlapAero.Cli;

/// <summary><c>flapaero landings</c>: a table of landings in, a table of their results out.</summary>
internal static class LandingsCommand
{
    private static readonly (string Column, Func<LandingResult, double> Value)[] Results =
    [
        ("approach_thrust", landing => landing.ApproachThrust.Newtons),
        ("flare_height", landing => landing.FlareHeight.Meters),
        ("flare_start_x", landing => landing.FlareStartDistance.Meters),
        ("flare_start_v", landing => landing.FlareStartAirspeed.MetersPerSecond),
        ("hold_off_end_x", landing => landing.HoldOffEndDistance.Meters),
        ("hold_off_end_v", landing => landing.HoldOffEndAirspeed.MetersPerSecond),
        ("touchdown_x", landing => landing.TouchdownDistance.Meters),
        ("touchdown_v", landing => landing.TouchdownAirspeed.MetersPerSecond),
        ("touchdown_sink", landing => landing.TouchdownSink.MetersPerSecond),
        ("touchdown_time", landing => landing.TouchdownTime.Seconds),
        ("nose_lower_x", landing => landing.NoseLowerDistance.Meters),
        ("stop_x", landing => landing.StopDistance.Meters),
        ("stop_time", landing => landing.StopTime.Seconds),
    ];

    public static Command Create(TextWriter output, TextWriter error, string workingFolder)
    {
        var cases = new Argument<string>("CASES.csv")
        {
            Description = $"The landings, one a row. Columns, in any order: {string.Join(", ", LandingsTable.Needed)}; may be left out: {string.Join(", ", LandingsTable.Optional)}; case names a landing; others are ignored.",
        };
        var results = new Option<string>("--out")
        {
            Description = "The file for the results: case, the 13 results and, where a landing cannot happen, the reason in the column error.",
            HelpName = "RESULTS.csv",
            Required = true,
        };
        var command = new Command("landings",
            "Computes landings, from the threshold to the stop. SI units, the path angle in degrees. "
            + "Exit code 0: all landed; 3: at least one cannot land (its reason is in the column error); "
            + "2: the call or the file is wrong, and nothing was written; 1: the results could not be written. "
            + "A training aid: the approved manual, local rules and a qualified instructor decide about a flight.")
        {
            cases, results,
        };
        PathText.NotEmpty(cases);
        PathText.NotEmpty(results);
        command.SetAction(parsed => Run(
            Path.GetFullPath(parsed.GetRequiredValue(cases), workingFolder),
            Path.GetFullPath(parsed.GetRequiredValue(results), workingFolder), output, error));
        return command;
    }

    private static int Run(string casesPath, string resultsPath, TextWriter output, TextWriter error)
    {
        if (OrdinaryFile.KindOf(casesPath) == FileKind.Missing)
        {
            error.WriteLine($"{casesPath}: there is no such file.");
            return ExitCode.WrongUsage;
        }

        LandingsTable table;
        IReadOnlyList<Outcome<LandingResult, LandingRefusal>> outcomes;
        try
        {
            WholeFile.Check(resultsPath);
        }
        catch (UnfitFileException e)
        {
            error.WriteLine($"--out: {resultsPath} is not written: {e.Message}.");
            return ExitCode.WrongUsage;
        }

        try
        {
            table = LandingsTable.Read(casesPath);
            if (table.Faults.Count > 0)
                return Refuse(casesPath, table.Faults, error);
            outcomes = Landing.FlyMany([.. table.Landings.Select(l => l.Setup)], [.. table.Landings.Select(l => l.Conditions)]);
        }
        catch (UnfitFileException e)
        {
            error.WriteLine($"{casesPath} is not read: {e.Message}.");
            return ExitCode.WrongUsage;
        }
        catch (NotSupportedException)
        {
            // So the reader of tables calls a row that never ends.
            error.WriteLine($"{casesPath} is refused, and nothing was written: a row is longer than 16 million characters; is a quote left open?");
            return ExitCode.WrongUsage;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine($"{casesPath} cannot be read: {e.Message}");
            return ExitCode.WrongUsage;
        }
        catch (RefusedInputException e)
        {
            return Refuse(casesPath, [e.Message], error);
        }

        try
        {
            Write(resultsPath, table.Names, outcomes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine($"{resultsPath} cannot be written, and what stood there before still does: {e.Message}");
            return ExitCode.Failed;
        }

        int refused = outcomes.Count(outcome => !outcome.Happened);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{outcomes.Count} landings, of which {refused} cannot happen, written to {resultsPath}"));
        foreach (int i in Enumerable.Range(0, outcomes.Count).Where(i => !outcomes[i].Happened).Take(Listing.Longest))
            error.WriteLine($"case {PlainText.Short(table.Names[i])}: {outcomes[i].Explanation}");
        if (refused > Listing.Longest)
            error.WriteLine($"{Listing.More(refused - Listing.Longest)}; the column error of the results has all reasons");

        return refused == 0 ? ExitCode.Done : ExitCode.CannotLand;
    }

    private static int Refuse(string path, IReadOnlyList<string> faults, TextWriter error)
    {
        error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{path} is refused, and nothing was written ({faults.Count} {(faults.Count == 1 ? "fault" : "faults")}):"));
        foreach (string fault in Listing.Capped(faults))
            error.WriteLine($"  {fault}");
        return ExitCode.WrongUsage;
    }

    private static void Write(string path, IReadOnlyList<string> names, IReadOnlyList<Outcome<LandingResult, LandingRefusal>> outcomes)
    {
        using var content = new MemoryStream();
        using (SepWriter writer = Sep.New(',').Writer(o => o with { Escape = true, CultureInfo = CultureInfo.InvariantCulture }).To(content, leaveOpen: true))
        {
            for (int i = 0; i < outcomes.Count; i++)
                WriteRow(writer, names[i], outcomes[i]);
        }

        WholeFile.Write(path, content.ToArray());
    }

    private static void WriteRow(SepWriter writer, string name, Outcome<LandingResult, LandingRefusal> outcome)
    {
        using SepWriter.Row row = writer.NewRow();
        row["case"].Set(name);
        foreach ((string column, Func<LandingResult, double> value) in Results)
            row[column].Set(outcome.Happened ? value(outcome.Value).ToString("R", CultureInfo.InvariantCulture) : "");
        row["error"].Set(outcome.Refusal.Reason());
    }
}
