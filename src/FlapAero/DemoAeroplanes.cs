namespace FlapAero;

/// <summary>The invented aeroplanes that come with the library, read from its own data at first use. Safe for any thread.</summary>
public static class DemoAeroplanes
{
    private static readonly Lazy<Aeroplane> H4 = new(() => Embedded("trainer-h4.json"));
    private static readonly Lazy<Aeroplane> L2 = new(() => Embedded("trainer-l2.json"));

    /// <summary>Trainer H4: four seats, high wing, three flap settings beside up.</summary>
    public static Aeroplane TrainerH4 => H4.Value;

    /// <summary>Trainer L2: two seats, low wing, two flap settings beside up.</summary>
    public static Aeroplane TrainerL2 => L2.Value;

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Aeroplane> All => [TrainerH4, TrainerL2];

    private static Aeroplane Embedded(string name)
    {
        using Stream stream = typeof(DemoAeroplanes).Assembly.GetManifestResourceStream($"aeroplanes/{name}")
            ?? throw new InvalidOperationException($"The library was built without its aeroplane {name}.");
        using var reader = new StreamReader(stream);
        return AeroplaneFile.Parse(reader.ReadToEnd(), name);
    }
}
