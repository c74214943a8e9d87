using System.CommandLine;
using System.Text;
using FlapAero.Files;
using FlapAero.Handouts.NotebookForm;
using FlapAero.Notebooks;

namespace FlapAero.Cli;

/// <summary><c>flapaero aeroplane</c>: an aeroplane from the numbers of its manual, and what is wrong with either file.</summary>
internal static class AeroplaneCommand
{
    public static Command Create(TextWriter output, TextWriter error, string workingFolder) => new("aeroplane",
        "An aeroplane's file from the numbers that its flight manual gives, and checks of both. " + Caution.OfTheCommand)
    {
        Fit(output, error, workingFolder),
        Check(output, error, workingFolder),
    };

    private static Command Fit(TextWriter output, TextWriter error, string workingFolder)
    {
        Argument<string> manual = File("MANUAL.json", "The manual's numbers, as data/manuals/manual.schema.json describes them.");
        var aeroplane = new Option<string>("--out") { Description = "The aeroplane's file to write.", HelpName = "FILE.json", Required = true };
        var page = new Option<string?>("--page") { Description = "Writes the report as a page too.", HelpName = "FILE.html" };
        PathText.NotEmpty(aeroplane, page);
        var command = new Command("fit",
            "Fits an aeroplane to the numbers of its manual: what they determine, with standard errors; what is assumed, and from where; what it is good for. "
            + "Exit code 0: the file is there; 2: the call or the manual is wrong, with all faults; 3: the numbers together make no aeroplane; 1: a file cannot be written. "
            + "Nothing is written but with 0.")
        {
            manual, aeroplane, page,
        };
        command.SetAction(parsed => RunFit(
            Path.GetFullPath(parsed.GetRequiredValue(manual), workingFolder), Path.GetFullPath(parsed.GetRequiredValue(aeroplane), workingFolder),
            parsed.GetValue(page) is { } path ? Path.GetFullPath(path, workingFolder) : null, output, error));
        return command;
    }

    private static Command Check(TextWriter output, TextWriter error, string workingFolder)
    {
        Argument<string> file = File("FILE", "A manual's file or an aeroplane's file.");
        var command = new Command("check",
            "Lists all faults of a manual's file or of an aeroplane's file at once: of form, of units, and of physics, each with its place, its value, "
            + "what is allowed, why, and the likely slip. Exit code 0: no fault; 2: faults, or no such file.")
        {
            file,
        };
        command.SetAction(parsed => RunCheck(Path.GetFullPath(parsed.GetRequiredValue(file), workingFolder), output, error));
        return command;
    }

    private static int RunFit(string manualPath, string aeroplanePath, string? pagePath, TextWriter output, TextWriter error)
    {
        try
        {
            WholeFile.Check(aeroplanePath);
            if (pagePath is not null) WholeFile.Check(pagePath);
        }
        catch (UnfitFileException e)
        {
            error.WriteLine($"{(pagePath is null ? aeroplanePath : $"{aeroplanePath} or {pagePath}")} is not written: {e.Message}.");
            return ExitCode.WrongUsage;
        }

        // The manual is what was typed: never write over it.
        if (string.Equals(manualPath, aeroplanePath, StringComparison.Ordinal) || string.Equals(manualPath, pagePath, StringComparison.Ordinal)
            || string.Equals(aeroplanePath, pagePath, StringComparison.Ordinal))
        {
            error.WriteLine("The manual, --out and --page are three files; two of them have the same name, and nothing was written.");
            return ExitCode.WrongUsage;
        }

        Outcome<ManualFit> outcome;
        try
        {
            outcome = ManualFit.Of(Manual.Read(manualPath));
        }
        catch (AeroplaneFileException refused)
        {
            error.WriteLine(refused.Message);
            error.WriteLine("Nothing was written.");
            return ExitCode.WrongUsage;
        }

        if (!outcome.Happened)
        {
            error.WriteLine($"{outcome.Explanation} Nothing was written.");
            return ExitCode.CannotLand;
        }

        ManualSheet sheet = ManualSheet.Of(outcome.Value);
        try
        {
            var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
            List<(string, byte[])> files = [(aeroplanePath, utf8.GetBytes(outcome.Value.Json))];
            if (pagePath is not null) files.Add((pagePath, utf8.GetBytes(Handouts.Manuals.ManualPage.ToHtml(sheet))));
            WholeFile.WriteAll(files);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine($"The aeroplane cannot be written, and what stood there before still does: {e.Message}");
            return ExitCode.Failed;
        }

        output.Write(sheet.ToString());
        output.WriteLine($"Written: {aeroplanePath}");
        if (pagePath is not null) output.WriteLine($"Written: {pagePath}");
        return ExitCode.Done;
    }

    private static int RunCheck(string path, TextWriter output, TextWriter error)
    {
        try
        {
            string text = AeroplaneFile.ReadText(path);
            string name = Path.GetFileName(path);
            bool isAeroplane = Manual.IsAeroplane(text);
            if (isAeroplane) AeroplaneFile.Parse(text, name);
            else Manual.Parse(text, name);
            output.WriteLine($"{name}: {(isAeroplane ? "an aeroplane" : "a manual")} without faults.");
            return ExitCode.Done;
        }
        catch (AeroplaneFileException refused)
        {
            error.WriteLine(refused.Message);
            return ExitCode.WrongUsage;
        }
    }

    private static Argument<string> File(string name, string description)
    {
        var file = new Argument<string>(name) { Description = description };
        PathText.NotEmpty(file);
        return file;
    }
}
