namespace FlapAero.Handouts.Lessons;

/// <summary>What the roles allow, in one place: the reader of notebooks asks here, and its messages quote it.</summary>
internal static class CellRules
{
    private static readonly CellRole[] MarkdownOnly = [CellRole.Opening, CellRole.Predict, CellRole.Sources];

    private static readonly CellRole[] Either = [CellRole.Scenario, CellRole.Explain, CellRole.Instructor];

    /// <summary>Every role as metadata spells it, in the order of a lesson.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Enum.GetValues<CellRole>().Select(Name)];

    public static string Name(CellRole role) => role.ToString().ToLowerInvariant();

    public static CellRole? Find(string name)
    {
        foreach (CellRole role in Enum.GetValues<CellRole>())
            if (Name(role) == name)
                return role;
        return null;
    }

    public static bool Allows(CellRole role, bool isCode) =>
        Either.Contains(role) || MarkdownOnly.Contains(role) != isCode;

    public static string KindOf(CellRole role) =>
        Either.Contains(role) ? "markdown or code" : MarkdownOnly.Contains(role) ? "markdown" : "code";

    /// <summary>The metadata a role needs beside role and title: no more and no less.</summary>
    public static IReadOnlyList<string> Extras(CellRole role) => role switch
    {
        CellRole.Commit => ["label", "unit"],
        CellRole.Answer => ["label", "unit", "student"],
        _ => [],
    };

    /// <summary>The metadata a role may have, all together or none: the values that a page lets its reader try.</summary>
    public static IReadOnlyList<string> Choices(CellRole role) => role is CellRole.Change ? ["label", "unit", "values"] : [];

    /// <summary>What else the metadata may hold, for the instructor: the minutes of a section that begins here, or what a note is for.</summary>
    public static IReadOnlyList<string> ForInstructor(CellRole role) => role switch
    {
        CellRole.Scenario or CellRole.Explain or CellRole.Predict or CellRole.Compute or CellRole.Change or CellRole.Problem => ["minutes"],
        CellRole.Instructor => ["note", "cells"],
        _ => [],
    };
}
