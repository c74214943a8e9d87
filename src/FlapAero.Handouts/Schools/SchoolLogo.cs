using System.Xml;
using FlapAero.Files;

namespace FlapAero.Handouts.Schools;

/// <summary>
/// A school's logo as an address that holds the picture. It is always shown as an image: in one a browser runs no script, follows no link
/// and fetches nothing, whatever the file holds.
/// </summary>
internal static class SchoolLogo
{
    /// <summary>The most that a logo may hold, in bytes; each page carries it.</summary>
    public const int Longest = 256 * 1024;

    private const string Svg = "http://www.w3.org/2000/svg";

    /// <summary>The address, from a path that leads down from a folder.</summary>
    /// <exception cref="HandoutException">It is no such picture, or leads elsewhere.</exception>
    public static string Read(string folder, string path)
    {
        string named = PlainText.Quoted(path);
        try
        {
            RefuseLinks(folder, path, named);
            byte[] bytes = OrdinaryFile.Read(Path.Combine(folder, path), OrdinaryFile.AeroplaneLimit);
            if (bytes.Length > Longest) throw Refused(named, "it holds more than 256 KiB; each page carries it, so make it smaller");
            string kind = Kind(bytes) ?? throw Refused(named, "it is no PNG, JPEG, GIF, WebP or SVG picture, whatever its name says");
            return $"data:{kind};base64,{Convert.ToBase64String(bytes)}";
        }
        catch (UnfitFileException e)
        {
            throw Refused(named, e.Message, e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw Refused(named, "there is no file of that name that may be read, in the folder of the school's file or below it", e);
        }
    }

    private static void RefuseLinks(string folder, string path, string named)
    {
        string at = folder;
        foreach (string step in path.Split('/'))
        {
            at = Path.Combine(at, step);
            if (new FileInfo(at).LinkTarget is not null || new DirectoryInfo(at).LinkTarget is not null)
                throw Refused(named, "a link stands in its path, and links lead elsewhere; put the picture itself there");
        }
    }

    private static string? Kind(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A])) return "image/png";
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])) return "image/jpeg";
        if (bytes.StartsWith("GIF87a"u8) || bytes.StartsWith("GIF89a"u8)) return "image/gif";
        if (bytes.Length > 12 && bytes.StartsWith("RIFF"u8) && bytes[8..].StartsWith("WEBP"u8)) return "image/webp";
        return IsSvg(bytes.ToArray()) ? "image/svg+xml" : null;
    }

    /// <summary>Well formed, without a document type, which could grow without end, and a drawing from its first element.</summary>
    private static bool IsSvg(byte[] bytes)
    {
        try
        {
            using var text = new MemoryStream(bytes);
            using var reader = XmlReader.Create(text, new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
            bool isDrawing = reader.MoveToContent() == XmlNodeType.Element && reader is { LocalName: "svg", NamespaceURI: Svg };
            while (reader.Read())
            {
                // To its end, so that a file cut short is found here and not on the page.
            }

            return isDrawing;
        }
        catch (XmlException)
        {
            return false;
        }
    }

    private static HandoutException Refused(string named, string why, Exception? cause = null)
    {
        string message = $"The school's logo {named} is refused: {why}.";
        return cause is null ? new(message) : new(message, cause);
    }
}
