using System.Text;

namespace FlapAero.Handouts.Printing;

/// <summary>A browser writes the moment of printing into a PDF; the same page must give the same bytes at any moment.</summary>
internal static class PdfDates
{
    private const string Fixed = "D:20000101000000+00'00'";

    private static readonly byte[][] Keys = [Encoding.ASCII.GetBytes("/CreationDate ("), Encoding.ASCII.GetBytes("/ModDate (")];

    /// <summary>Writes one constant date over both, in place: the file's table of byte positions stays true.</summary>
    /// <exception cref="HandoutException">A date is missing or has another form, so the bytes would not be the same every time.</exception>
    public static void Fix(byte[] pdf)
    {
        foreach (byte[] key in Keys)
        {
            int at = pdf.AsSpan().IndexOf(key);
            Span<byte> date = at < 0 ? default : pdf.AsSpan(at + key.Length);
            if (date.IndexOf((byte)')') != Fixed.Length)
                throw new HandoutException($"The browser's PDF has no {Encoding.ASCII.GetString(key[..^2])} in the usual form; try another version of the browser.");
            Encoding.ASCII.GetBytes(Fixed, date);
        }
    }
}
