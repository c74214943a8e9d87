using UnitsNet;

namespace FlapAero.Notebooks.Tests;

public class CheckTests
{
    private static readonly Lesson TheLesson = Lesson.Begin();
    private static readonly Speed Expected = Speed.FromKnots(51.1);
    private static readonly Speed Tolerance = Speed.FromKnots(0.5);

    public static TheoryData<Speed, CheckOutcome, string> Answers => new()
    {
        { Speed.FromKnots(51.4), CheckOutcome.Passed, "51.4_kt is right, within 0.5_kt" },
        { Speed.FromMetersPerSecond(26.3), CheckOutcome.Passed, "51.1_kt is right, within 0.5_kt" },
        { Speed.FromKnots(51.6), CheckOutcome.Passed, "right" },
        { Speed.FromKnots(0), CheckOutcome.Open, "not answered yet" },
        { default, CheckOutcome.Open, "not answered yet" },
        { Speed.FromKnots(-51.1), CheckOutcome.Wrong, "right size but the wrong sign" },
        { Speed.FromKnots(26.29), CheckOutcome.Wrong, "That would be right in metres per second; the answer wants knots." },
        { Speed.FromKnots(58.8), CheckOutcome.Wrong, "That would be right in statute miles per hour" },
        { Speed.FromKnots(94.6), CheckOutcome.Wrong, "That would be right in kilometres per hour" },
        { Speed.FromMetersPerSecond(51.1), CheckOutcome.Wrong, "The number would be right in knots, but it was given in metres per second." },
        { Speed.FromKnots(102.2), CheckOutcome.Wrong, "twice what it should be" },
        { Speed.FromKnots(25.55), CheckOutcome.Wrong, "half of what it should be" },
        { Speed.FromKnots(70), CheckOutcome.Wrong, "70.0_kt is too high" },
        { Speed.FromKnots(40), CheckOutcome.Wrong, "40.0_kt is too low" },
        { Speed.FromKnots(52), CheckOutcome.Wrong, "a little too high" },
    };

    [Theory]
    [MemberData(nameof(Answers), DisableDiscoveryEnumeration = true)]
    public void Check_Speed_IsDiagnosedInWords(Speed answer, CheckOutcome outcome, string words)
    {
        CheckResult result = TheLesson.Check("Stall speed", answer, Expected, Tolerance);
        Assert.Equal(outcome, result.Outcome);
        Assert.Contains(words, result.Words.Replace('\u00A0', '_'), StringComparison.Ordinal);
        Assert.StartsWith("Stall speed: ", result.Words, StringComparison.Ordinal);
        if (outcome != CheckOutcome.Passed) Assert.DoesNotContain("51.1\u00A0kt", result.Words.Replace("\u221251.1", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    public static TheoryData<IQuantity, IQuantity, IQuantity, string> OtherQuantities => new()
    {
        { Length.FromFeet(381), Length.FromFeet(1250), Length.FromFeet(10), "right in metres; the answer wants feet" },
        { Mass.FromPounds(1043), Mass.FromPounds(2300), Mass.FromPounds(5), "right in kilograms; the answer wants pounds" },
        { Angle.FromDegrees(0.0524), Angle.FromDegrees(3), Angle.FromDegrees(0.1), "right in radians; the answer wants degrees" },
        { Temperature.FromDegreesCelsius(59), Temperature.FromDegreesCelsius(15), Temperature.FromDegreesCelsius(1), "right in degrees Fahrenheit" },
        { Ratio.FromPercent(0.235), Ratio.FromPercent(23.5), Ratio.FromPercent(1), "right in a plain fraction; the answer wants per cent" },
    };

    [Theory]
    [MemberData(nameof(OtherQuantities), DisableDiscoveryEnumeration = true)]
    public void Check_NumberOfAnotherUnit_NamesTheUnit(IQuantity answer, IQuantity expected, IQuantity tolerance, string words)
    {
        CheckResult result = TheLesson.Check("Answer", answer, expected, tolerance);
        Assert.Equal(CheckOutcome.Wrong, result.Outcome);
        Assert.Contains(words, result.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_RightInRadians_IsConfirmedInTheDegreesThatWereAskedFor()
    {
        CheckResult result = TheLesson.Check("Path", Angle.FromRadians(Math.Atan(0.0494)), Angle.FromDegrees(2.83), Angle.FromDegrees(0.03));
        Assert.Equal("Path: 2.83° is right, within 0.03°.", result.Words.Replace("\u00A0", "", StringComparison.Ordinal));
    }

    [Fact]
    public void Check_KnownMistake_ComesBeforeEveryOtherDiagnosis()
    {
        var mistake = new Mistake(Speed.FromKnots(102.2), "That is the speed at four times the weight.");
        CheckResult result = TheLesson.Check("Stall speed", Speed.FromKnots(102.0), Expected, Tolerance, mistake);
        Assert.Equal(CheckOutcome.Wrong, result.Outcome);
        Assert.EndsWith("That is the speed at four times the weight.", result.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("twice", result.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_Coefficient_IsDiagnosedToo()
    {
        Assert.Equal(CheckOutcome.Passed, TheLesson.Check("C_L", 1.61, 1.6, 0.02).Outcome);
        Assert.Equal(CheckOutcome.Open, TheLesson.Check("C_L", 0, 1.6, 0.02).Outcome);
        Assert.Contains("3.20 is twice", TheLesson.Check("C_L", 3.2, 1.6, 0.02).Words, StringComparison.Ordinal);
        CheckResult known = TheLesson.Check("C_L", 2.0, 1.6, 0.02, new Mistake(2.0, "That is with the flaps down."));
        Assert.Contains("flaps down", known.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    public void Check_AnswerNotFinite_IsWrongNotAnException(double answer)
    {
        CheckResult result = TheLesson.Check("C_L", answer, 1.6, 0.02);
        Assert.Equal(CheckOutcome.Wrong, result.Outcome);
        Assert.Contains("not a finite number", result.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_AtFault_IsRefused()
    {
        Speed one = Speed.FromKnots(1);
        Assert.Throws<RefusedInputException>(() => TheLesson.Check("x", one, Expected, Speed.FromKnots(0)));
        Assert.Contains("\"x\"", Assert.Throws<RefusedInputException>(() => TheLesson.Check("x", 1, double.NaN, 0.1)).Message, StringComparison.Ordinal);
        Assert.Contains("\"x\"", Assert.Throws<RefusedInputException>(() => TheLesson.Check("x", 1, 2, double.NaN)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedInputException>(() => new Mistake(double.NaN, "No."));
        Assert.Throws<RefusedInputException>(() => TheLesson.Check("x", one, Speed.FromKnots(0.2), one));
        var refusal = Assert.Throws<RefusedInputException>(() => TheLesson.Check("x", one, Expected, one, new Mistake(Length.FromFeet(1), "No.")));
        Assert.Contains("Length", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ToHtml_Outcome_IsInTheDataAttribute()
    {
        var page = Html.Parse(TheLesson.Check("<b>", Speed.FromKnots(70), Expected, Tolerance).ToHtml());
        Assert.Equal("wrong", page.QuerySelector("div.check")!.GetAttribute("data-outcome"));
        Assert.Null(page.QuerySelector("b"));
        Assert.Equal("open", Html.Parse(TheLesson.Check("x", default, Expected, Tolerance).ToHtml()).QuerySelector("div.check")!.GetAttribute("data-outcome"));
        Assert.Equal("passed", Html.Parse(TheLesson.Check("x", Expected, Expected, Tolerance).ToHtml()).QuerySelector("div.check")!.GetAttribute("data-outcome"));
    }
}
