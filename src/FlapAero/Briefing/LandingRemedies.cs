using UnitsNet;

namespace FlapAero;

/// <summary>What would make a landing fit that does not, each alone and none where it would not help. Immutable.</summary>
public sealed class LandingRemedies
{
    internal LandingRemedies(Length? runway, Mass? mass, Speed? headwind, FlapSetting? flaps) =>
        (Runway, Mass, Headwind, Flaps) = (runway, mass, headwind, flaps);

    /// <summary>The shortest runway like this one, aimed as low over the threshold as the school allows.</summary>
    public Length? Runway { get; }

    /// <summary>The heaviest mass below the flight's, in tens of kilograms.</summary>
    public Mass? Mass { get; }

    /// <summary>The least steady headwind straight down the runway, in whole knots to 30 kt.</summary>
    public Speed? Headwind { get; }

    /// <summary>The smallest flap setting, if one works.</summary>
    public FlapSetting? Flaps { get; }
}
