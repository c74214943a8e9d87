using UnitsNet;

namespace FlapAero;

/// <summary>Runway, air and wind of a canonical landing. Immutable, thread-safe. Values that make no sense are refused when a landing is flown.</summary>
public sealed record LandingRunway
{
    /// <summary>The air.</summary>
    public required Air Air
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = value;
        }
    }

    /// <summary>w, steady and the same at every height; negative from behind.</summary>
    public required Speed Headwind { get; init; }

    /// <summary>μ_r, friction of the rolling wheels.</summary>
    public required double RollingFriction { get; init; }

    /// <summary>μ_b, effective friction under braking on the whole normal force.</summary>
    public required double BrakingFriction { get; init; }

    /// <summary>tan ε, rise over run, positive uphill; it acts on the roll only.</summary>
    public required double Slope { get; init; }

    /// <summary>Wind and slope.</summary>
    public override string ToString() => string.Create(
        System.Globalization.CultureInfo.InvariantCulture, $"headwind {Headwind.Knots:0.0} kt, slope {100 * Slope:0.0} %");
}
