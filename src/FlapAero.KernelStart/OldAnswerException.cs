namespace FlapAero.KernelStart;

/// <summary>A check is asked to judge an answer whose cell did not run to its end.</summary>
internal sealed class OldAnswerException(string name)
    : Exception($"The last cell that sets {name} failed, so this check would judge the value from before.");
