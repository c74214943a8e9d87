namespace FlapAero;

/// <summary>The manuals that come with the library, made from the invented aeroplanes with the rounding that manuals use. Safe for any thread.</summary>
public static class DemoManuals
{
    private static Lazy<Manual> H4 { get; } = new(() => Embedded("trainer-h4.json"));

    /// <summary>Trainer H4's.</summary>
    public static Manual TrainerH4 => H4.Value;

    private static Manual Embedded(string name)
    {
        using Stream stream = typeof(DemoManuals).Assembly.GetManifestResourceStream($"manuals/{name}")
            ?? throw new InvalidOperationException($"The library was built without its manual {name}.");
        using var reader = new StreamReader(stream);
        return Manual.Parse(reader.ReadToEnd(), name);
    }
}
