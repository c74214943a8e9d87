using FlapAero.AeroplaneFiles;

namespace FlapAero.Manuals;

/// <summary>What a manual's numbers must make together.</summary>
internal static class ManualRules
{
    public static void Check(ManualContent manual, FaultList faults)
    {
    }
}
