using System.Security.Cryptography;
using System.Text;

namespace FlapAero.Notebooks.Seals;

/// <summary>
/// The one-way function of a seal: PBKDF2 with HMAC-SHA-256. Half of what it gives is a tag that a right guess is known by,
/// the other half opens the words that belong to the guess. The page's own script computes the same.
/// </summary>
/// <remarks>
/// A seal keeps an answer from being read, not from being searched for: who tries every value in range finds it in
/// seconds, since an answer to within a knot is one of a hundred or so. It is for practice, not for examinations.
/// </remarks>
internal sealed class SlowHash
{
    /// <summary>So many that a check tries its dozen of guesses within 0.3 s in a browser.</summary>
    public const int Rounds = 4000;

    private const int TagBytes = 16;

    private readonly byte[] _key;

    public SlowHash(string guess, string saltHex, int rounds) => _key = Rfc2898DeriveBytes.Pbkdf2(
        Encoding.UTF8.GetBytes(guess), Convert.FromHexString(saltHex), rounds, HashAlgorithmName.SHA256, 2 * TagBytes);

    public string Tag => Convert.ToHexStringLower(_key.AsSpan(0, TagBytes));

    /// <summary>The salt belongs to the question, so that a page built twice is the same page.</summary>
    public static string SaltOf(string question) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(question)).AsSpan(0, TagBytes));

    public string Close(string words) => Convert.ToHexStringLower(Stream(Encoding.UTF8.GetBytes(words)));

    public string Open(string hex) => Encoding.UTF8.GetString(Stream(Convert.FromHexString(hex)));

    private byte[] Stream(byte[] bytes)
    {
        byte[] block = [.. _key.AsSpan(TagBytes), 0];
        for (int at = 0; at < bytes.Length; at += SHA256.HashSizeInBytes, block[^1]++)
        {
            byte[] pad = SHA256.HashData(block);
            for (int i = at; i < Math.Min(bytes.Length, at + pad.Length); i++) bytes[i] ^= pad[i - at];
        }
        return bytes;
    }
}
