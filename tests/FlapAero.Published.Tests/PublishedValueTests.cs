using System.Globalization;
using Xunit.Sdk;

namespace FlapAero.Published.Tests;

/// <summary>Every outside value of data/published against the library.</summary>
public sealed class PublishedValueTests
{
    private static readonly string[] Standings =
    [
        "read", "read in a scan", "read in a transcription", "read in the abstract", "read second-hand",
        "computed from the source's formula and inputs", "remembered",
    ];

    public static IEnumerable<TheoryDataRow<string>> Evaluated => Cases(row => Evaluations.ById.ContainsKey(row.Id));

    public static IEnumerable<TheoryDataRow<string>> WithSourceFormula =>
        Cases(row => Evaluations.ById.TryGetValue(row.Id, out Evaluation? found) && found.SourceFormula is not null);

    public static IEnumerable<TheoryDataRow<string>> Laws => Cases(row => Evaluations.Laws.ContainsKey(row.Id));

    public static IEnumerable<TheoryDataRow<string>> Every => Cases(_ => true);

    [Theory, MemberData(nameof(Evaluated))]
    public void Library_EvaluatedRow_AgreesOrDisagreesAsRemarked(string id)
    {
        PublishedRow row = PublishedRows.Get(id);
        double[] computed = Evaluations.ById[id].Library();
        if (row.Model.Length == 0)
        {
            AssertAgrees(row, row.Numbers, computed);
            return;
        }

        AssertAgrees(row, row.ModelNumbers, computed);
        // A remark about a disagreement that has gone is a wrong remark.
        Assert.Contains(row.Numbers.Zip(computed), pair => !pair.First.Agrees(pair.Second));
    }

    [Theory, MemberData(nameof(WithSourceFormula))]
    public void SourceFormula_RowOfAnotherForm_GivesThePrintedValue(string id) =>
        AssertAgrees(PublishedRows.Get(id), PublishedRows.Get(id).Numbers, Evaluations.ById[id].SourceFormula!());

    [Theory, MemberData(nameof(Laws))]
    public void Library_RowThatIsAFormula_FollowsIt(string id) =>
        Assert.All(Evaluations.Laws[id].Pairs(), pair => Assert.Equal(pair.Formula, pair.Library, 1e-12));

    [Theory, MemberData(nameof(Every))]
    public void Row_AsStored_IsComplete(string id)
    {
        PublishedRow row = PublishedRows.Get(id);
        Assert.NotEmpty(row.Quantity);
        Assert.NotEmpty(row.Value);
        Assert.True(row.Unit.Length > 0 || Evaluations.Context.ContainsKey(id), $"{row}: a value without a unit.");
        Assert.NotEmpty(row.Source);
        Assert.Contains(row.Standing, Standings);
        bool unusual = row.Tolerance.Length > 0 || row.Model.Length > 0;
        Assert.True(!unusual || row.Remark.Length > 0, $"{row}: a tolerance or a disagreement needs its reason as a remark.");
    }

    [Theory, MemberData(nameof(Every))]
    public void Row_AsListed_IsEvaluatedOrExplainedOnce(string id)
    {
        int homes = (Evaluations.ById.ContainsKey(id) ? 1 : 0)
            + (Evaluations.Laws.ContainsKey(id) ? 1 : 0)
            + (Evaluations.Context.ContainsKey(id) ? 1 : 0);
        Assert.True(homes == 1, $"{PublishedRows.Get(id)} is checked or explained {homes} times: once is right.");
    }

    [Fact]
    public void Evaluations_EveryId_HasItsRow()
    {
        IEnumerable<string> ids = [.. Evaluations.ById.Keys, .. Evaluations.Laws.Keys, .. Evaluations.Context.Keys];
        Assert.Empty(ids.Except(PublishedRows.All.Select(row => row.Id)));
    }

    private static void AssertAgrees(PublishedRow row, IReadOnlyList<PrintedNumber> printed, double[] computed)
    {
        Assert.Equal(printed.Count, computed.Length);
        foreach ((PrintedNumber expected, double value) in printed.Zip(computed))
        {
            if (!expected.Agrees(value))
                throw new XunitException(string.Create(
                    CultureInfo.InvariantCulture,
                    $"{row.Id} {row.Quantity} ({row.Conditions}): {expected} {row.Unit} in {row.Source}, {value:g8} here. {row.Remark}"));
        }
    }

    private static IEnumerable<TheoryDataRow<string>> Cases(Func<PublishedRow, bool> chosen) =>
        PublishedRows.All.Where(chosen).Select(row => new TheoryDataRow<string>(row.Id) { TestDisplayName = row.ToString() });
}
