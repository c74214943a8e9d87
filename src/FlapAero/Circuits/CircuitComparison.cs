using UnitsNet;
using UnitsNet.Units;

namespace FlapAero;

/// <summary>Two circuits side by side, for example flaps up against full: everything is the first less the second. Immutable.</summary>
public sealed class CircuitComparison
{
    /// <summary>A comparison.</summary>
    /// <param name="first">Usually the flapless circuit.</param>
    /// <param name="second">Usually the one with flaps.</param>
    public CircuitComparison(Circuit first, Circuit second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        First = first;
        Second = second;
    }

    /// <summary>The first circuit.</summary>
    public Circuit First { get; }

    /// <summary>The second circuit.</summary>
    public Circuit Second { get; }

    /// <summary>How much further past abeam the base turn begins.</summary>
    public Length BaseTurnFurtherOut => First.BaseTurnPastAbeam - Second.BaseTurnPastAbeam;

    /// <summary>How much longer final is.</summary>
    public Length FinalLonger => First.LengthOfFinal - Second.LengthOfFinal;

    /// <summary>How much earlier along downwind power is reduced.</summary>
    public Length PowerReducedEarlier => Second.PowerReducedPastAbeam - First.PowerReducedPastAbeam;

    /// <summary>How much higher the turn to final ends.</summary>
    public Length RollsOutHigher => (First.HeightRollingOut - Second.HeightRollingOut).ToUnit(LengthUnit.Foot);

    /// <summary>How much longer it takes from abeam the touchdown point, or from reducing power before that, to the threshold.</summary>
    public Duration TakesLonger => First.TimeToThreshold - Second.TimeToThreshold;

    /// <summary>How much more thrust final takes.</summary>
    public Force MoreThrustOnFinal => First.Final.Thrust - Second.Final.Thrust;
}
