using System.Globalization;
using FlapAero.Files;

namespace FlapAero;

/// <summary>A file that makes no aeroplane, with all its faults. The message lists the first 50, one a line.</summary>
public sealed class AeroplaneFileException : Exception
{
    internal AeroplaneFileException(string name, IReadOnlyList<AeroplaneFault> faults)
        : base(List(name, faults))
    {
        Name = name;
        Faults = faults;
    }

    /// <summary>The file's name, without its folder.</summary>
    public string Name { get; }

    /// <summary>At least one fault, in the order of their lines.</summary>
    public IReadOnlyList<AeroplaneFault> Faults { get; }

    private static string List(string name, IReadOnlyList<AeroplaneFault> faults)
    {
        string count = faults.Count == 1 ? "1 fault" : string.Create(CultureInfo.InvariantCulture, $"{faults.Count} faults");
        return string.Join('\n', Listing.Capped([.. faults.Select(fault => fault.ToString())]).Prepend($"{name}: {count}"));
    }
}
