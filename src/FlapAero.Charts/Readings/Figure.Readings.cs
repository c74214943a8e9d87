namespace FlapAero.Charts;

/// <content>What one reads off a figure.</content>
public sealed partial class Figure
{
    /// <summary>
    /// What answers the figure's question: first what was said of it, then its marks and levels, then where its lines
    /// meet each other, a level or zero, where each is highest and lowest, and where each begins and ends.
    /// </summary>
    public IReadOnlyList<Reading> Readings => [.. ReadOff.Of(this).Where(reading => !UnsaidReadings.Contains(reading.Name))];

    internal IReadOnlyList<(string Name, Words Value)> SaidReadings { get; private init; } = [];

    internal IReadOnlyList<string> UnsaidReadings { get; private init; } = [];

    /// <summary>Says a reading that the lines themselves do not give, such as where the wheels touch.</summary>
    /// <param name="name">What is read off.</param>
    /// <param name="value">Where; quantities in it are put into words.</param>
    /// <returns>A new figure with the reading.</returns>
    /// <exception cref="RefusedInputException">The name or the value is empty.</exception>
    /// <example><code>figure.Reading("flaps up, the wheels touch", $"{landing.TouchdownDistance}")</code></example>
    public Figure Reading(string name, Words value)
    {
        Require.Words(name, "name of the reading");
        ArgumentNullException.ThrowIfNull(value);
        if (value.ToString().Trim().Length == 0) throw Refusal($"the reading \"{name}\" says nothing; give it a value");
        return With(saidReadings: [.. SaidReadings, (name.Trim(), value)]);
    }

    /// <summary>Leaves a reading out, because the reader is asked for that very number.</summary>
    /// <param name="name">The reading's name as <see cref="Readings"/> has it.</param>
    /// <returns>A new figure without the reading.</returns>
    /// <exception cref="RefusedInputException">The figure so far has no such reading.</exception>
    /// <example><code>figure.WithoutReading("flaps up and full flap meet")</code></example>
    public Figure WithoutReading(string name)
    {
        Require.Words(name, "name of the reading");
        string[] names = [.. Readings.Select(reading => reading.Name)];
        return names.Contains(name.Trim()) ? With(unsaidReadings: [.. UnsaidReadings, name.Trim()])
            : throw Refusal($"it has no reading \"{name}\" to leave out; it has {string.Join(", ", names.Select(known => $"\"{known}\""))}");
    }
}
