using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using FlapAero.Handouts;
using FlapAero.Handouts.NewLessons;

namespace FlapAero.Cli;

/// <summary><c>flapaero new lesson</c>: a notebook with every part of a lesson, to be written over.</summary>
internal static class NewCommand
{
    public static Command Create(TextWriter output, TextWriter error, string workingFolder)
    {
        var title = new Argument<string>("TITLE") { Description = $"The lesson's title: {NewLesson.AllowedTitle}." };
        var number = new Option<int?>("--number")
        {
            Description = "The lesson's number, 0 to 99. Without it: one more than the highest.",
            HelpName = "NN",
            CustomParser = NumberOf,
        };
        var notebooks = new Option<string?>("--notebooks")
        {
            Description = "The folder of the lessons. Without it: notebooks in the repository.",
            HelpName = "DIR",
        };
        var lesson = new Command("lesson",
            "Writes a notebook with all parts that a lesson needs, small but whole: it runs, passes check, and its handouts can be made at once. "
            + "Exit code 0: written; 1: the number, the name or the folder is taken or missing; 2: the call is wrong.")
        {
            title, number, notebooks,
        };
        PathText.NotEmpty(notebooks);
        lesson.SetAction(async (parsed, cancellationToken) =>
        {
            try
            {
                string folder = RepositoryFolder.Named(parsed.GetValue(notebooks), workingFolder, "--notebooks", "notebooks");
                string file = NewLesson.Write(folder, parsed.GetValue(title)!, parsed.GetValue(number));
                await output.WriteLineAsync($"{file} is written. Next: flapaero handouts --lesson {Path.GetFileNameWithoutExtension(file)}; then write your lesson over it, with docs/authoring.md.");
                return ExitCode.Done;
            }
            catch (BadTitleException e)
            {
                await error.WriteLineAsync(e.Message);
                return ExitCode.WrongUsage;
            }
            catch (HandoutException e)
            {
                await error.WriteLineAsync(e.Message);
                return ExitCode.Failed;
            }
        });
        return new Command("new", "Begins something new for the project's folder.") { lesson };
    }

    private static int? NumberOf(ArgumentResult result)
    {
        string text = result.Tokens.Count == 1 ? result.Tokens[0].Value : "";
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) && value <= NewLesson.HighestNumber)
            return value;
        result.AddError($"--number is \"{text}\"; allowed is a whole number from 0 to 99.");
        return null;
    }
}
