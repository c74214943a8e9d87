using System.Globalization;
using System.Runtime.InteropServices;

namespace FlapAero.Files;

/// <summary>
/// The one place where a file that a user names is opened for reading: only an ordinary file, and no more of it than a limit.
/// A pipe would wait for ever for its other end, and a device such as /dev/zero has none.
/// </summary>
internal static partial class OrdinaryFile
{
    private const int KindBits = 0xF000;
    private const int OrdinaryBits = 0x8000;
    private const int FolderBits = 0x4000;
    private const int ModeOffset = 4;
    private const int MebiByte = 1024 * 1024;

    /// <summary>The most that an aeroplane's file may hold, in bytes; the ones that come along hold 20 000.</summary>
    public const int AeroplaneLimit = MebiByte;

    /// <summary>The most that a notebook may hold, in bytes; one that was run and saved holds 2 million.</summary>
    public const int NotebookLimit = 64 * MebiByte;

    /// <summary>The most that a table of landings may hold, in bytes: about a million landings.</summary>
    public const int TableLimit = 256 * MebiByte;

    /// <summary>What stands at a path; where it is a link, at its end.</summary>
    public static FileKind KindOf(string path)
    {
        if (Directory.Exists(path))
            return FileKind.Folder;
        if (!File.Exists(path))
            return FileKind.Missing;
        if (OperatingSystem.IsWindows())
            return FileKind.Ordinary;
        // .NET's own call, which hides that all systems but Windows lay out their answer differently. .NET does not offer the kind itself.
        Span<byte> status = stackalloc byte[512];
        if (Status(path, status) != 0)
            return FileKind.Missing;
        return (MemoryMarshal.Read<int>(status[ModeOffset..]) & KindBits) switch
        {
            OrdinaryBits => FileKind.Ordinary,
            FolderBits => FileKind.Folder,
            _ => FileKind.Other,
        };
    }

    /// <summary>All of a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="limit">The most bytes it may have.</param>
    /// <exception cref="UnfitFileException">It is a folder, a device, a pipe or longer than the limit.</exception>
    /// <exception cref="IOException">It is missing or cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static byte[] Read(string path, int limit)
    {
        if (Fault(KindOf(path)) is { } fault)
            throw new UnfitFileException(fault);
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
        if (file.Length > limit)
            throw TooLong(limit);
        using var content = new MemoryStream((int)file.Length);
        var part = new byte[81920];
        for (int read; (read = file.Read(part)) > 0;)
        {
            // A file may grow while it is read.
            if (content.Length + read > limit)
                throw TooLong(limit);
            content.Write(part, 0, read);
        }

        return content.ToArray();
    }

    /// <summary>Why a kind can be neither read nor replaced; null where it can, or where nothing is there.</summary>
    public static string? Fault(FileKind kind) => kind switch
    {
        FileKind.Folder => "it is a folder; a file is wanted, not a folder",
        FileKind.Other => "it is a device, a pipe or a socket; an ordinary file is wanted",
        _ => null,
    };

    private static UnfitFileException TooLong(int limit) =>
        new(string.Create(CultureInfo.InvariantCulture, $"it holds more than {limit / MebiByte} MiB; that much is allowed"));

    [LibraryImport("libSystem.Native", EntryPoint = "SystemNative_Stat", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Status(string path, Span<byte> status);
}
