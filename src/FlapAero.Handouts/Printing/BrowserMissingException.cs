namespace FlapAero.Handouts.Printing;

/// <summary>No browser is there to print with: pages can be written all the same, PDFs cannot.</summary>
public sealed class BrowserMissingException : Exception
{
    internal BrowserMissingException(string message)
        : base(message)
    {
    }
}
