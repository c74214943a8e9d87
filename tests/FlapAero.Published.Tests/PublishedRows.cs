using nietras.SeparatedValues;

namespace FlapAero.Published.Tests;

/// <summary>All rows of data/published, by their id.</summary>
internal static class PublishedRows
{
    private static readonly Lazy<IReadOnlyDictionary<string, PublishedRow>> ById =
        new(() => Read().ToDictionary(row => row.Id, StringComparer.Ordinal));

    public static IEnumerable<PublishedRow> All => ById.Value.Values.OrderBy(row => row.Id, StringComparer.Ordinal);

    public static PublishedRow Get(string id) => ById.Value[id];

    /// <summary>A row's only number: the input of another row.</summary>
    public static double Input(string id) => Get(id).Single;

    private static List<PublishedRow> Read()
    {
        List<PublishedRow> rows = [];
        foreach (string path in Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "published"), "*.csv"))
        {
            // Titles and conditions hold commas, so they stand in quotes.
            using SepReader reader = Sep.New(',').Reader(options => options with { Unescape = true }).FromFile(path);
            foreach (SepReader.Row row in reader)
            {
                rows.Add(new PublishedRow(
                    Path.GetFileName(path),
                    row["id"].ToString(),
                    row["quantity"].ToString(),
                    row["conditions"].ToString(),
                    row["value"].ToString(),
                    row["unit"].ToString(),
                    row["source"].ToString(),
                    row["standing"].ToString(),
                    row["tolerance"].ToString(),
                    row["model"].ToString(),
                    row["remark"].ToString()));
            }
        }

        return rows;
    }
}
