namespace FlapAero.Cli;

/// <summary>What the command tells the shell.</summary>
internal static class ExitCode
{
    public const int Done = 0;

    /// <summary>A lesson, a folder or the machine refused; nothing was written.</summary>
    public const int Failed = 1;

    /// <summary>The command was called in a way it does not know.</summary>
    public const int WrongUsage = 2;

    /// <summary>At least one landing cannot happen; the results of the others were written.</summary>
    public const int CannotLand = 3;

    /// <summary>Stopped from the keyboard, as shells count it.</summary>
    public const int Stopped = 130;
}
