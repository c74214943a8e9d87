namespace FlapAero.Published.Tests.Landings;
public sealed class HandbookDocumentTests
{
    [Fact] public void Dump()
    {
        foreach (var f in new[]{FlapsFailed.H4, FlapsFailed.L2}) Console.WriteLine($"{f.AgainstFull}\n {f.AgainstTheSettingBefore}\n {f.SquareOfTheSpeeds}\n lift {f.AgainstLiftWithoutDrag}\n drag {f.AgainstDragWithoutLift}");
        foreach (var d in RuleLandings.All) Console.WriteLine($"{d} {d.HeadwindOfTheTouchdown}");
    }
}
