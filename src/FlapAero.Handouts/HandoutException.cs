namespace FlapAero.Handouts;

/// <summary>A refusal meant for a person: its message says what, where, which value and what is allowed.</summary>
public sealed class HandoutException : Exception
{
    /// <summary>Makes a refusal from its words.</summary>
    /// <param name="message">The words, without a stack trace; several faults stand on lines of their own.</param>
    public HandoutException(string message)
        : base(message)
    {
    }

    /// <summary>Makes a refusal from its words and what led to it.</summary>
    /// <param name="message">The words.</param>
    /// <param name="innerException">What led to it; never shown.</param>
    public HandoutException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
