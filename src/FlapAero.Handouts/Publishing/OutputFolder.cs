using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using FlapAero.Files;

namespace FlapAero.Handouts.Publishing;

/// <summary>
/// Puts a set of files into a folder so that a kill at any moment leaves every file whole and one whole set recoverable: all
/// new files are first written beside; a single rename of the plan decides that the new set counts; then the files are moved
/// into place. A run that finds a plan finishes it before anything else; one that finds files without a plan removes them.
/// </summary>
/// <remarks>One run at a time: a lock, which ends with the process that holds it, keeps out another.</remarks>
internal sealed class OutputFolder : IDisposable
{
    private const string OwnName = ".flapaero";

    private readonly string _folder;
    private readonly string _own;
    private bool _made;
    private FileStream? _lock;
    private PageSet _present = PageSet.Empty;

    private OutputFolder(string folder)
    {
        _folder = folder;
        _own = Path.Combine(folder, OwnName);
    }

    private sealed record Plan(IReadOnlyList<string> Moves, IReadOnlyList<string> Removals);

    /// <summary>What of ours the folder holds.</summary>
    public PageSet Present => _present;

    private string Staging => Path.Combine(_own, "new");

    private string SetFile => Path.Combine(_own, "pages.json");

    private string PlanFile => Path.Combine(_own, "plan.json");

    /// <summary>Opens the folder, makes it where it is missing, and mends what an interrupted run left. Early: a lesson takes seconds to run, and its pages would then have nowhere to go.</summary>
    /// <exception cref="HandoutException">The folder cannot be written, or another run writes to it.</exception>
    public static OutputFolder Open(string folder)
    {
        var opened = new OutputFolder(folder);
        try
        {
            opened.Try(opened.Open);
            return opened;
        }
        catch
        {
            opened.Dispose();
            throw;
        }
    }

    /// <summary>Whether the folder holds a file of that name.</summary>
    public bool Has(string name) => File.Exists(Path.Combine(_folder, name));

    /// <summary>The files of a lesson where all of them are there as they were made, from these inputs and for this choice; else null.</summary>
    public IReadOnlyList<string>? Unchanged(string lesson, string inputs, string choice) =>
        _present.Lessons.TryGetValue(lesson, out PageSet.Made? made) && made.Inputs == inputs && made.Choice == choice && made.Files.All(IsAsWeLeftIt)
            ? made.Files : null;

    /// <summary>Writes files, removes others, and notes what the folder then holds. Bytes that are there already are not written again.</summary>
    public void Write(IReadOnlyDictionary<string, byte[]> files, IReadOnlyList<string> removals, PageSet set) => Try(() =>
    {
        string[] changed = [.. files.Keys.Where(name => !IsThere(name, files[name]))];
        RefuseForeign(changed);
        if (changed.Length == 0 && removals.Count == 0 && set.ToBytes().AsSpan().SequenceEqual(_present.ToBytes()))
            return;
        try
        {
            Directory.CreateDirectory(Staging);
            foreach (string name in changed)
                WriteThrough(Path.Combine(Staging, name), files[name]);
            WriteThrough(Path.Combine(Staging, Path.GetFileName(SetFile)), set.ToBytes());
            string plan = Path.Combine(Staging, Path.GetFileName(PlanFile));
            WriteThrough(plan, JsonSerializer.SerializeToUtf8Bytes(new Plan(changed, [.. removals.Where(IsAsWeLeftIt)])));
            File.Move(plan, PlanFile);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A full disk is not kept full.
            Directory.Delete(Staging, recursive: true);
            throw;
        }
        Finish();
    });

    public void Dispose()
    {
        _lock?.Dispose();
        _lock = null;
        try
        {
            // A build that fails leaves no trace, not even an empty folder.
            if (Directory.Exists(_own) && !File.Exists(SetFile) && !File.Exists(PlanFile))
                Directory.Delete(_own, recursive: true);
            if (_made && Directory.Exists(_folder) && !Directory.EnumerateFileSystemEntries(_folder).Any())
                Directory.Delete(_folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // What is left does no harm, and the next run removes it.
        }
    }

    private void Open()
    {
        _made = !Directory.Exists(_folder);
        Directory.CreateDirectory(_own);
        RefuseLinks();
        if (OperatingSystem.IsWindows())
            File.SetAttributes(_own, FileAttributes.Directory | FileAttributes.Hidden);
        try
        {
            _lock = new FileStream(Path.Combine(_own, "lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException) when (File.Exists(Path.Combine(_own, "lock")))
        {
            _made = false;
            throw new HandoutException($"Another run is writing to the folder {_folder}; wait for it to end, or name another folder with --out.");
        }
        _lock.SetLength(0);
        _lock.WriteByte((byte)'\n');
        _lock.Flush(flushToDisk: true);
        Finish();
        if (Directory.Exists(Staging))
            Directory.Delete(Staging, recursive: true);
        _present = PageSet.Read(SetFile);
    }

    /// <summary>Does what a plan says and is not done yet; a second time, and from any point, it ends the same.</summary>
    private void Finish()
    {
        if (!File.Exists(PlanFile))
            return;
        Plan plan = ReadPlan();
        foreach (string name in plan.Moves)
            MoveIfThere(Path.Combine(Staging, name), Path.Combine(_folder, name));
        foreach (string name in plan.Removals)
            File.Delete(Path.Combine(_folder, name));
        MoveIfThere(Path.Combine(Staging, Path.GetFileName(SetFile)), SetFile);
        File.Delete(PlanFile);
        if (Directory.Exists(Staging))
            Directory.Delete(Staging, recursive: true);
        _present = PageSet.Read(SetFile);
    }

    /// <summary>The plan; an empty one where somebody else's hand wrote something that no run of ours would.</summary>
    private Plan ReadPlan()
    {
        try
        {
            return JsonSerializer.Deserialize<Plan>(Read(PlanFile)) is { Moves: not null, Removals: not null } plan
                && plan.Moves.Concat(plan.Removals).All(name => name == Path.GetFileName(name)) ? plan : new Plan([], []);
        }
        catch (JsonException)
        {
            return new Plan([], []);
        }
    }

    private static void MoveIfThere(string from, string to)
    {
        if (File.Exists(from))
            File.Move(from, to, overwrite: true);
    }

    private static void WriteThrough(string path, byte[] bytes)
    {
        using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        try
        {
            file.Write(bytes);
            file.Flush(flushToDisk: true);
        }
        catch (ArgumentOutOfRangeException e)
        {
            // So .NET calls a file that is larger than the system allows.
            throw new IOException(e.Message, e);
        }
    }

    private static byte[] Read(string path) => OrdinaryFile.Read(path, Array.MaxLength);

    /// <summary>What this class keeps is emptied and written as it runs; a link there would lead it to somebody's file.</summary>
    private void RefuseLinks()
    {
        string[] own = [_own, Path.Combine(_own, "lock"), Staging, SetFile, PlanFile];
        if (own.FirstOrDefault(path => new FileInfo(path).LinkTarget is not null || OrdinaryFile.KindOf(path) == FileKind.Other) is { } strange)
        {
            _made = false;
            throw new HandoutException(
                $"{strange} is a link, a device or a pipe, where this command keeps files of its own; remove it or name another folder with --out.");
        }
    }

    private bool IsThere(string name, byte[] bytes)
    {
        var file = new FileInfo(Path.Combine(_folder, name));
        return file.Exists && file.Length == bytes.Length && Read(file.FullName).AsSpan().SequenceEqual(bytes);
    }

    /// <summary>A page that somebody has written into since is theirs.</summary>
    private bool IsAsWeLeftIt(string name) =>
        Has(name) && _present.Files.TryGetValue(name, out PageSet.Entry? entry) && HashOf(Read(Path.Combine(_folder, name))) == entry.Hash;

    public static string HashOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>A folder may hold files of the user's; one that only happens to have a page's name must not be lost.</summary>
    private void RefuseForeign(IEnumerable<string> names)
    {
        string[] foreign = [.. names.Where(name => Has(name) && !_present.Files.ContainsKey(name)
            && Read(Path.Combine(_folder, name)).AsSpan().IndexOf(Encoding.ASCII.GetBytes("FlapAero")) < 0)];
        if (foreign.Length > 0)
            throw new HandoutException(
                $"The folder {_folder} holds {string.Join(" and ", foreign)}, not made by this command, where a page of that name would go; move it away or name another folder with --out.");
    }

    private void Try(Action action)
    {
        try
        {
            action();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new HandoutException($"The folder {_folder} cannot be written: {e.Message.ReplaceLineEndings(" ").TrimEnd('.')}. What stood there before still does. Make room or mend its rights, or name another with --out.", e);
        }
    }
}
