using System.Text;
using System.Text.Json;
using FlapAero.Notebooks.Seals;
using FlapAero.Tests;
using UnitsNet;

namespace FlapAero.Notebooks.Tests;

public class SealTests
{
    private static readonly Lesson TheLesson = Lesson.Begin();
    private static readonly Speed Expected = Speed.FromKnots(51.13);
    private static readonly Speed Tolerance = Speed.FromKnots(0.5);
    private static readonly Mistake[] Mistakes = [new(Speed.FromKnots(46.7), "The bank is missing."), new(Speed.FromKnots(102.3), "That is for four times the weight.")];
    private static readonly string Seal = SealOf(Expected, Tolerance, Mistakes);

    public static TheoryData<double> Knots =>
        [.. new[] { 51.13, 50.63, 51.63, 50.62, 51.64, 46.7, 46.2, 102.3, 102.26, 25.565, -51.13, 26.3, 58.84, 94.69, 70, 0.3, 1e6, -1e6, 5178, 511.3, 5.113, 52, 50 }];

    [Theory, MemberData(nameof(Knots))]
    public void CheckSealed_AnyAnswer_SaysWhatTheOpenCheckSays(double knots)
    {
        CheckResult open = TheLesson.Check("Stall", Speed.FromKnots(knots), Expected, Tolerance, Mistakes);
        CheckResult closed = TheLesson.CheckSealed(Speed.FromKnots(knots), Seal);

        Assert.Equal(open.Outcome, closed.Outcome);
        // The one thing that a seal does not know: on which side of the answer a guess lies.
        bool isOff = open.Words.EndsWith("high.", StringComparison.Ordinal) || open.Words.EndsWith("low.", StringComparison.Ordinal);
        string off = open.Words.Contains("a little", StringComparison.Ordinal)
            ? " is close, but not close enough: look for a value that was rounded early." : " is not right: work it again.";
        Assert.Equal(isOff ? open.Words[..open.Words.IndexOf(" is ", StringComparison.Ordinal)] + off : open.Words, closed.Words);
    }

    [Fact]
    public void CheckSealed_OtherUnitOrNothing_SaysSo()
    {
        Assert.Equal(CheckOutcome.Passed, TheLesson.CheckSealed(Speed.FromMetersPerSecond(26.3), Seal).Outcome);
        Assert.Contains("given in metres per second", TheLesson.CheckSealed(Speed.FromMetersPerSecond(51.1), Seal).Words, StringComparison.Ordinal);
        Assert.Equal(CheckOutcome.Open, TheLesson.CheckSealed(Speed.FromKnots(0), Seal).Outcome);
        Assert.Contains("wanted is a Speed", TheLesson.CheckSealed(Length.FromFeet(51), Seal).Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(DisplayUnits.Aviation, "write Length.FromFeet(51).")]
    [InlineData(DisplayUnits.SI, "write Length.FromMeters(51).")]
    public void CheckSealed_BareNumber_SaysWhatToWrite(DisplayUnits units, string words)
    {
        Lesson lesson = Lesson.Begin(units: units);
        string seal = lesson.Check("Height", Length.FromFeet(1000), Length.FromFeet(1000), Length.FromFeet(15)).Kept().Key!.Seal;

        Assert.Contains(words, lesson.CheckSealed(51, seal).Words, StringComparison.Ordinal);
        Assert.Equal(CheckOutcome.Wrong, lesson.CheckSealed(51, seal).Outcome);
        Assert.Equal(CheckOutcome.Open, lesson.CheckSealed(0.0, seal).Outcome);
        Assert.Contains("the answer is a Speed; wanted is a Length. Write Length.From", lesson.CheckSealed(Speed.FromKnots(51), seal).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void CheckSealed_QuantityForAPlainNumber_SaysWhatToWrite()
    {
        string seal = SealText.Of(NumberSeal.Of("C", "", Scalar.FromAmount(1.6), Scalar.FromAmount(0.02), []));
        Assert.Contains("wanted is a plain number. Write a number without a unit", TheLesson.CheckSealed(Speed.FromKnots(1.6), seal).Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.6, 0.02)]
    [InlineData(-3.4, 0.5)]
    [InlineData(2043.7, 30)]
    [InlineData(0.03, 0.001)]
    public void CheckSealed_PlainNumber_IsRightToItsEdgesAndNoFurther(double expected, double tolerance)
    {
        string seal = SealText.Of(NumberSeal.Of("C", "", Scalar.FromAmount(expected), Scalar.FromAmount(tolerance), []));
        Assert.All([-1, -0.999, 0, 0.999, 1], share => Assert.Equal(CheckOutcome.Passed, TheLesson.CheckSealed(expected + share * tolerance, seal).Outcome));
        Assert.All([-1.001, 1.001], share => Assert.Equal(CheckOutcome.Wrong, TheLesson.CheckSealed(expected + share * tolerance, seal).Outcome));
        Assert.Contains("not a finite number", TheLesson.CheckSealed(double.NaN, seal).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Seal_Decoded_HasNeitherTheAnswerNorTheWords()
    {
        string json = Encoding.UTF8.GetString(Convert.FromBase64String(Seal));

        Assert.Contains("\"rounds\":4000", json, StringComparison.Ordinal);
        Assert.DoesNotContain("51.", json, StringComparison.Ordinal);
        Assert.DoesNotContain("46.", json, StringComparison.Ordinal);
        Assert.DoesNotContain("bank", json, StringComparison.Ordinal);
        Assert.Equal(Seal, SealOf(Expected, Tolerance, Mistakes));
        Assert.NotEqual(NumberSeal.Parse(Seal).Right[0].Tag, NumberSeal.Parse(SealOf(Speed.FromKnots(53), Tolerance, Mistakes)).Right[0].Tag);
    }

    public static TheoryData<double> Shares => [0.01, 0.02, 0.03, 0.05, 0.06, 0.1, 0.0137];

    [Theory, MemberData(nameof(Shares))]
    public void Seal_ToleranceThatIsAShareOfTheAnswer_BetraysNothing(double share)
    {
        foreach (double feet in new[] { 1, 8.25, 51.13, 100, 617.3, 1500, 1523.7, 2000, 9999, 0.031 })
        {
            AnswerKey key = KeyOf(Length.FromFeet(feet), Length.FromFeet(feet) * share);

            Assert.Empty(SealAttack.Betrays(key.Seal));
            Assert.InRange(key.Tolerance!.Value / feet, share * 0.4, share * 1.6);
            Assert.All([-0.999, 0, 0.999], part => Assert.Equal(CheckOutcome.Passed,
                TheLesson.CheckSealed(Length.FromFeet(feet + part * key.Tolerance.Value), key.Seal).Outcome));
            Assert.All([-1.001, 1.001, 5], part => Assert.Equal(CheckOutcome.Wrong,
                TheLesson.CheckSealed(Length.FromFeet(feet + part * key.Tolerance.Value), key.Seal).Outcome));
        }
    }

    [Fact]
    public void Seal_AnyTwoAnswers_TellTheSameInNumbers()
    {
        // Where the line of numbers is cut says nothing of the answer: all but hashes is alike.
        string Told(double feet) => JsonSerializer.Serialize(NumberSeal.Parse(KeyOf(Length.FromFeet(feet), Length.FromFeet(7)).Seal) with { Right = [], Known = [] });

        Assert.Equal(Told(1234.5), Told(987.65));
    }

    [Theory]
    [InlineData(51.13, 0.5, 0.5)]
    [InlineData(50, 0.5, 0.4)]
    [InlineData(1523.7, 30.474, 20)]
    [InlineData(480, 9.26, 10)]
    [InlineData(2043, 25, 25)]
    [InlineData(40, 0.7, 0.7)]
    [InlineData(10, 1, 0.9)]
    public void Of_Tolerance_IsWhatAPersonWouldWriteAndNoUsualShare(double expected, double tolerance, double coarse) =>
        Assert.Equal(coarse, CoarseTolerance.Of(expected, tolerance));

    [Fact]
    public void Of_ToleranceInTenths_IsTheDecimalThatAPersonWrites()
    {
        foreach (int power in Enumerable.Range(-9, 19))
            foreach (string step in (string[])["1", "1.2", "1.5", "2", "2.5", "3", "4", "5", "6", "7", "8", "9"])
            {
                double written = double.Parse(FormattableString.Invariant($"{step}E{power}"), System.Globalization.CultureInfo.InvariantCulture);
                // Far from any usual share of it.
                Assert.Equal(written, CoarseTolerance.Of(7.77 * written, written * (1 + 1e-12)));
            }
    }

    [Theory]
    [InlineData(1.5, "20.8 ± 1.5\u00A0kt", "within 1.5\u00A0kt")]
    [InlineData(0.25, "20.8 ± 0.25\u00A0kt", "within 0.25\u00A0kt")]
    [InlineData(4, "21 ± 4\u00A0kt", "within 4\u00A0kt")]
    public void Check_ToleranceOfTwoDigits_IsPrintedAsItIsTested(double tolerance, string answer, string verdict)
    {
        CheckResult check = TheLesson.Check("What", Speed.FromKnots(20.75), Speed.FromKnots(20.75), Speed.FromKnots(tolerance));

        Assert.Equal(answer, check.Kept().Key!.Answer);
        Assert.Contains(verdict, check.Words, StringComparison.Ordinal);
    }

    private static AnswerKey KeyOf(Length answer, Length tolerance) =>
        TheLesson.Check("What", answer, answer, tolerance).Kept().Key!;

    [Theory]
    [InlineData("")]
    [InlineData("no seal")]
    [InlineData("e30=")]
    public void CheckSealed_DamagedSeal_IsRefusedInWords(string seal)
    {
        Assert.Contains("damaged", Assert.Throws<RefusedInputException>(() => TheLesson.CheckSealed(Speed.FromKnots(1), seal)).Message, StringComparison.Ordinal);
        Assert.Contains("damaged", Assert.Throws<RefusedInputException>(() => TheLesson.CheckSealed("a", seal)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("b", CheckOutcome.Passed, "Turn: b is right. Weight cancels.")]
    [InlineData(" B) ", CheckOutcome.Passed, "Turn: b is right. Weight cancels.")]
    [InlineData("a", CheckOutcome.Wrong, "Turn: a is not right. Faster, but in the same ratio.")]
    [InlineData("c", CheckOutcome.Wrong, "Turn: c is not right. Für Übermut.")]
    [InlineData("d", CheckOutcome.Passed, "Turn: d is safe and accepted; it is more than the rule asks. Never wrong.")]
    [InlineData("e", CheckOutcome.Wrong, "write a letter from a to d")]
    [InlineData("", CheckOutcome.Open, "not answered yet")]
    public void CheckSealed_Choice_HasItsReason(string choice, CheckOutcome outcome, string words)
    {
        string seal = SealText.Of(ChoiceSeal.Of("Turn", "q", [(Standing.Wrong, "Faster, but in the same ratio."), (Standing.Right, "Weight cancels."), (Standing.Wrong, "Für Übermut."), (Standing.Safe, "Never wrong.")]));

        CheckResult result = TheLesson.CheckSealed(choice, seal);

        Assert.Equal(outcome, result.Outcome);
        Assert.Contains(words, result.Words, StringComparison.Ordinal);
        Assert.Single(ChoiceSeal.Parse(seal).Verdicts.Select(v => v.Length / 8).Distinct());
    }

    private static string SealOf(Speed expected, Speed tolerance, Mistake[] mistakes) => SealText.Of(NumberSeal.Of("Stall", "", expected, tolerance, mistakes));
}
