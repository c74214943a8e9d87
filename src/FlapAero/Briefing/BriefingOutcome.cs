using System.Diagnostics.CodeAnalysis;

namespace FlapAero;

/// <summary>A briefing, or every reason why there is none. Immutable.</summary>
public sealed class BriefingOutcome
{
    internal BriefingOutcome(Briefing? briefing, IReadOnlyList<string> refusals)
    {
        Briefing = briefing;
        Refusals = refusals;
    }

    /// <summary>The briefing, if there is one.</summary>
    public Briefing? Briefing { get; }

    /// <summary>Why there is none, a sentence each: what, which value, what is allowed, why; empty if there is one.</summary>
    public IReadOnlyList<string> Refusals { get; }

    /// <summary>Whether there is a briefing.</summary>
    [MemberNotNullWhen(true, nameof(Briefing))]
    public bool IsPossible => Briefing is not null;

    /// <summary>The briefing, for those who expect one.</summary>
    /// <exception cref="InvalidOperationException">There is none; the message lists the reasons.</exception>
    public Briefing Made => Briefing ?? throw new InvalidOperationException(string.Join('\n', Refusals));
}
