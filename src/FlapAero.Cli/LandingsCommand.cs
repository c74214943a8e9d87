using System.CommandLine;
using System.Globalization;
using FlapAero.Equations;
using FlapAero.Files;
using FlapAero.Handouts.NotebookForm;
using nietras.SeparatedValues;

namespace FlapAero.Cli;

/// <summary><c>flapaero landings</c>: a table of landings in, a table of their results out.</summary>
internal static class LandingsCommand
{
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
        LandingOutcome[] outcomes;
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
            outcomes = new LandingOutcome[table.Landings.Length];
            LandingSolver.SolveInParallel(table.Landings, outcomes);
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

        int refused = outcomes.Count(o => o.Refusal != LandingRefusal.None);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{outcomes.Length} landings, of which {refused} cannot happen, written to {resultsPath}"));
        foreach (int i in Enumerable.Range(0, outcomes.Length).Where(i => outcomes[i].Refusal != LandingRefusal.None).Take(Listing.Longest))
            error.WriteLine($"case {PlainText.Short(table.Names[i])}: {RefusalText.Explain(outcomes[i])}");
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

    private static void Write(string path, IReadOnlyList<string> names, LandingOutcome[] outcomes)
    {
        using var content = new MemoryStream();
        using (SepWriter writer = Sep.New(',').Writer(o => o with { Escape = true, CultureInfo = CultureInfo.InvariantCulture }).To(content, leaveOpen: true))
        {
            for (int i = 0; i < outcomes.Length; i++)
                WriteRow(writer, names[i], outcomes[i]);
        }

        WholeFile.Write(path, content.ToArray());
    }

    private static void WriteRow(SepWriter writer, string name, in LandingOutcome outcome)
    {
        using SepWriter.Row row = writer.NewRow();
        row["case"].Set(name);
        ReadOnlySpan<double> results = LandingOutcome.Results(outcome);
        bool landed = outcome.Refusal == LandingRefusal.None;
        for (int i = 0; i < results.Length; i++)
            row[ResultColumns.Names[i]].Set(landed ? results[i].ToString("R", CultureInfo.InvariantCulture) : "");
        row["error"].Set(outcome.Refusal.Reason());
    }
}
