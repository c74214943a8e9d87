using FlapAero.Charts;
using Microsoft.DotNet.Interactive.Formatting;
using UnitsNet;

namespace FlapAero.Notebooks;

/// <summary>
/// Shows one of everything that lessons show, to nobody. The runtime compiles what is used for the first time, a second in all: a
/// kernel that starts has a core to spare for it.
/// </summary>
internal static class Rehearsal
{
    internal static void Run()
    {
        Lesson lesson = Lesson.Begin();
        Air air = Air.StandardSeaLevel;
        Configuration[] settings = [.. lesson.Aeroplane.FlapSettings.Select(flaps => lesson.Aeroplane.Configure(flaps))];
        Speed stall = settings[0].StallSpeed(air).Calibrated, off = Speed.FromKnots(1);
        Figure figure = new Figure("A figure", Axis.Of("angle of bank", "φ", "°"), Axis.Of("stalling speed", "V_S", "kt"))
            .Line("flaps up", Samples.Between(0, 60, 5), bank => settings[0].StallSpeed(air, Angle.FromDegrees(bank)).Calibrated.Knots)
            .Level("wings level", stall.Knots).Caption($"To nobody.").Finding($"It begins at {stall}.");
        object[] shown =
        [
            lesson,
            lesson.Say($"**One** sentence with $x^2$ and {stall}."),
            lesson.Table("A table", settings, ("flaps", c => c.Flaps.Name), ("stall", c => c.StallSpeed(air).Calibrated)),
            lesson.Compare("A prediction", off, stall),
            lesson.Check("A check", stall, stall, off, new Mistake(2 * stall, "Twice as much.")),
            lesson.Problem("A problem", $"At {stall}?", ["A hint."], 2 * stall, off, $"Twice {stall}.", new Mistake(stall, "Half of it.")),
            lesson.Choose("A choice", $"Which?", [Option.Right("This.", "So it is."), Option.Wrong("That.", "It is not."), Option.Wrong("Neither.", "One is.")], ["A hint."], $"This."),
            figure,
            figure.Moving(Axis.Of("weight", "W", "%"), Samples.Between(80, 100, 20), start: 80, (still, share) => still.Mark("here", share / 2, stall.Knots)),
        ];
        foreach (object value in shown)
            value.ToDisplayString(HtmlFormatter.MimeType);
    }
}
