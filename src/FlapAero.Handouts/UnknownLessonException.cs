namespace FlapAero.Handouts;

/// <summary>A lesson was asked for by a name that no notebook has: a slip of the caller's, not of a lesson.</summary>
public sealed class UnknownLessonException : Exception
{
    internal UnknownLessonException(IReadOnlyList<string> unknown, IReadOnlyList<string> known)
        : base($"No lesson is called {string.Join(" or ", unknown.Select(n => $"\"{n}\""))}; there are: {string.Join(", ", known)}.")
    {
    }
}
