using System.Security.Cryptography;
using System.Text;
using FlapAero.Handouts.Lessons;

namespace FlapAero.Handouts.Cache;

/// <summary>Makes the key of what is computed from the parts it is computed from.</summary>
internal sealed class ContentKey
{
    private readonly MemoryStream _parts = new();
    private readonly BinaryWriter _writer;

    public ContentKey(string what)
    {
        // The writer puts a text's length before it, so that no two lists of parts run together to the same bytes.
        _writer = new BinaryWriter(_parts, Encoding.UTF8);
        _writer.Write(what);
    }

    public ContentKey With(string part)
    {
        _writer.Write(part);
        return this;
    }

    public ContentKey With(int part)
    {
        _writer.Write(part);
        return this;
    }

    /// <summary>What a cell's run depends on.</summary>
    public ContentKey WithRunOf(LessonCell cell) => With(cell.Id).With(cell.Role.ToString()).With(cell.Source).With(cell.ValuesText);

    /// <summary>What a class chose about a lesson, but for the number of its sheets.</summary>
    public ContentKey With(LessonInput input) => With(input.Seed).With(input.Units.ToString())
        .With(input.Aeroplane?.Name ?? "").With(input.Aeroplane?.Json ?? "").With(input.School?.Name ?? "").With(input.School?.Json ?? "");

    public override string ToString()
    {
        _writer.Flush();
        return Convert.ToHexStringLower(SHA256.HashData(_parts.ToArray()));
    }
}
