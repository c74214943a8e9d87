namespace FlapAero.Handouts.Publishing;

/// <summary>Puts together what a folder will hold: what is made now, and of what is there all that still agrees with it.</summary>
internal sealed class PageSetBuilder(PageSet present)
{
    /// <summary>The page that leads to all others; it belongs to no lesson.</summary>
    public const string Index = "index.html";

    private readonly Dictionary<string, PageSet.Entry> _entries = new(StringComparer.Ordinal);
    private readonly Dictionary<string, PageSet.Made> _lessons = new(StringComparer.Ordinal);
    private readonly Dictionary<string, byte[]> _files = new(StringComparer.Ordinal);

    /// <summary>The files made now.</summary>
    public IReadOnlyDictionary<string, byte[]> Files => _files;

    /// <summary>The files of these lessons that stem from other inputs and are not made now: beside the new ones they would disagree.</summary>
    public IReadOnlyList<string> Outdated =>
        [.. present.Files.Where(f => _lessons.TryGetValue(f.Value.Lesson, out PageSet.Made? made) && made.Inputs != f.Value.Inputs && !_files.ContainsKey(f.Key))
            .Select(f => f.Key)];

    /// <summary>Adds what was made of a lesson.</summary>
    public void Add(string lesson, string inputs, string choice, IReadOnlyDictionary<string, byte[]> files)
    {
        foreach ((string name, byte[] content) in files)
            Add(name, content, lesson, inputs);
        _lessons.Add(lesson, new PageSet.Made(inputs, choice, [.. files.Keys]));
    }

    public void AddIndex(byte[] content) => Add(Index, content, "", "");

    /// <summary>Whether the folder will hold a file of that name.</summary>
    public bool WillHave(string name, OutputFolder output) => _files.ContainsKey(name) || output.Has(name) && !Outdated.Contains(name);

    public PageSet ToSet()
    {
        IReadOnlyList<string> outdated = Outdated;
        var entries = new Dictionary<string, PageSet.Entry>(_entries);
        foreach ((string name, PageSet.Entry entry) in present.Files.Where(f => !outdated.Contains(f.Key)))
            entries.TryAdd(name, entry);
        var lessons = new Dictionary<string, PageSet.Made>(_lessons);
        foreach ((string lesson, PageSet.Made made) in present.Lessons)
            lessons.TryAdd(lesson, made);
        return new PageSet(entries, lessons);
    }

    private void Add(string name, byte[] content, string lesson, string inputs)
    {
        _files.Add(name, content);
        _entries.Add(name, new PageSet.Entry(lesson, inputs, OutputFolder.HashOf(content)));
    }
}
