using UnitsNet;

namespace FlapAero.Notebooks.Tests;

public sealed class UnitsTests
{
    private static readonly Lesson InSI = Lesson.Begin(units: DisplayUnits.SI);

    [Fact]
    public void Say_InSI_ShowsItsQuantitiesInSI() =>
        Assert.Equal("Hold 30.9 m/s at 90.", Plain(InSI.Say($"Hold {Speed.FromKnots(60)} at {90}.")));

    [Fact]
    public void Table_InSI_ShowsItsQuantitiesInSI() =>
        Assert.Contains("15 m", Plain(InSI.Table("Heights", [Length.FromFeet(50)], ("height", h => h, "ft 0"))), StringComparison.Ordinal);

    [Fact]
    public void Compare_InSI_TakesTheUnitThatStandsForThePredictions() =>
        Assert.Equal("Faster: you said 10.3 m/s, the model gives 5.1 m/s. That is 5.1 m/s too high (100 %).",
            Plain(InSI.Compare("Faster", Speed.FromKnots(20), Speed.FromKnots(10))));

    [Fact]
    public void Check_InSI_TakesTheSameAnswersInWhateverUnit()
    {
        CheckResult Check(Speed answer) => InSI.Check("Speed", answer, Speed.FromKnots(60), Speed.FromKnots(1));

        Assert.Equal(CheckOutcome.Passed, Check(Speed.FromKnots(60.9)).Outcome);
        Assert.Equal(CheckOutcome.Passed, Check(Speed.FromMetersPerSecond(30.9)).Outcome);
        Assert.Equal(CheckOutcome.Wrong, Check(Speed.FromKnots(61.1)).Outcome);
    }

    [Fact]
    public void Problem_InSI_AsksHintsAndAnswersInSI()
    {
        Problem problem = InSI.Problem("Speed", $"The stall is at {Speed.FromKnots(50)}.", [$"Take 1.3 times {Speed.FromKnots(50)}."],
            Speed.FromKnots(65), Speed.FromKnots(1), $"It is {Speed.FromKnots(65)}.");

        Assert.Equal("33.4 ± 0.5 m/s", problem.Answer.Replace(QuantityText.NoBreakSpace, ' '));
        Assert.Equal("m/s", problem.Unit);
        Assert.DoesNotContain("kt", problem.ToString(), StringComparison.Ordinal);
        Assert.Contains("25.7 m/s", Plain(problem), StringComparison.Ordinal);
    }

    private static string Plain(LessonResult result) => result.ToString().Replace(QuantityText.NoBreakSpace, ' ');
}
