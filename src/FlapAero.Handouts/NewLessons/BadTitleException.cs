namespace FlapAero.Handouts.NewLessons;

/// <summary>A title that no lesson can have: a slip of the call.</summary>
internal sealed class BadTitleException(string message) : Exception(message);
