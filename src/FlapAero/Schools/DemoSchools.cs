namespace FlapAero;

/// <summary>The school that comes with the library; all of it is invented. Safe for any thread.</summary>
public static class DemoSchools
{
    private static Lazy<School> AtQuillmere { get; } = new(() => Embedded("quillmere.json"));

    /// <summary>A school at the lessons' invented aerodrome.</summary>
    public static School Quillmere => AtQuillmere.Value;

    private static School Embedded(string name)
    {
        using Stream stream = typeof(DemoSchools).Assembly.GetManifestResourceStream($"schools/{name}")
            ?? throw new InvalidOperationException($"The library was built without its school {name}.");
        using var reader = new StreamReader(stream);
        return School.Parse(reader.ReadToEnd(), name);
    }
}
