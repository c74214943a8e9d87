using FlapAero.Files;
namespace FlapAero.AeroplaneFiles;

/// <summary>A JSON value that knows its line. Immutable.</summary>
internal abstract record JsonItem(int Line)
{
    /// <summary>How a message speaks of it.</summary>
    public abstract string Written { get; }
}

/// <summary>A key and its value.</summary>
internal sealed record JsonMember(string Key, int Line, JsonItem Item);

internal sealed record ObjectItem(int Line, IReadOnlyList<JsonMember> Members) : JsonItem(Line)
{
    public override string Written => "an object { … }";
}

internal sealed record ArrayItem(int Line, IReadOnlyList<JsonItem> Items) : JsonItem(Line)
{
    public override string Written => "a list [ … ]";
}

internal sealed record TextItem(int Line, string Text) : JsonItem(Line)
{
    public override string Written => $"the text {PlainText.Quoted(Text)}";
}

internal sealed record NumberItem(int Line, double Value, string Digits) : JsonItem(Line)
{
    public override string Written => $"the number {PlainText.Short(Digits)}";
}

/// <summary><c>true</c>, <c>false</c> or <c>null</c>: an aeroplane's file has no use for any of them.</summary>
internal sealed record WordItem(int Line, string Word) : JsonItem(Line)
{
    public override string Written => Word;
}
