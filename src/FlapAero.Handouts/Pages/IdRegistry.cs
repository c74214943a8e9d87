using System.Globalization;

namespace FlapAero.Handouts.Pages;

/// <summary>Hands out the ids of one page, each once, in an order that the lesson alone decides.</summary>
internal sealed class IdRegistry
{
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);

    public string Claim(string wanted)
    {
        string id = wanted;
        for (int n = 2; !_taken.Add(id); n++)
            id = string.Create(CultureInfo.InvariantCulture, $"{wanted}-{n}");
        return id;
    }
}
