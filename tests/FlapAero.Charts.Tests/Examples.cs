using UnitsNet;

namespace FlapAero.Charts.Tests;

internal static class Examples
{
    internal static readonly IReadOnlyList<double> Banks = Samples.Between(0, 60, 1);

    internal static double InTurn(double level, double bank) => level / Math.Sqrt(Math.Cos(bank * Math.PI / 180));

    internal static Figure Empty => new("Stall speed in a level turn", Axis.Of("angle of bank", "φ", "°"), Axis.Of("stall speed", "V_S", "kt CAS"));

    internal static Figure Turn => Empty
        .Line("flaps up", Banks, bank => InTurn(53.3, bank))
        .Line("flaps 35°", Banks, bank => InTurn(46.1, bank))
        .Level("reference speed", 69.3)
        .Mark("base to final", 30, InTurn(53.3, 30))
        .Caption($"Stall speed V_S against bank at {Mass.FromPounds(2300)}.")
        .Finding($"At 60° the stall speed V_S is {Speed.FromKnots(75.38)} with flaps up.");
}
