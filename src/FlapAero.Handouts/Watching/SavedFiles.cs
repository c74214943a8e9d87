using System.Threading.Channels;

namespace FlapAero.Handouts.Watching;

/// <summary>Tells that notebooks, or a file that lessons are made from, have been saved. Saves in quick succession are one.</summary>
internal sealed class SavedFiles : IDisposable
{
    /// <summary>An editor writes a file in several steps; after so long without another it is done.</summary>
    private static readonly TimeSpan Quiet = TimeSpan.FromMilliseconds(150);

    private readonly Channel<bool> _saves = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });
    private readonly List<FileSystemWatcher> _watchers = [];

    /// <summary>Begins to watch.</summary>
    /// <param name="notebooks">The folder of notebooks.</param>
    /// <param name="others">Other files that the lessons are made from.</param>
    public SavedFiles(string notebooks, IEnumerable<string> others)
    {
        Watch(notebooks, "*.ipynb");
        foreach (string file in others.Where(file => Directory.Exists(Path.GetDirectoryName(file))))
            Watch(Path.GetDirectoryName(file)!, Path.GetFileName(file));
    }

    /// <summary>Waits for the next save, and until the editor is done with it.</summary>
    public async Task WaitAsync(CancellationToken cancellationToken)
    {
        await _saves.Reader.ReadAsync(cancellationToken).ConfigureAwait(false);
        do
            await Task.Delay(Quiet, cancellationToken).ConfigureAwait(false);
        while (_saves.Reader.TryRead(out _));
    }

    public void Dispose()
    {
        foreach (FileSystemWatcher watcher in _watchers)
            watcher.Dispose();
    }

    private void Watch(string folder, string filter)
    {
        var watcher = new FileSystemWatcher(folder, filter);
        watcher.Changed += (_, _) => _saves.Writer.TryWrite(true);
        watcher.Created += (_, _) => _saves.Writer.TryWrite(true);
        watcher.Deleted += (_, _) => _saves.Writer.TryWrite(true);
        watcher.Renamed += (_, _) => _saves.Writer.TryWrite(true);
        watcher.Error += (_, _) => _saves.Writer.TryWrite(true);
        watcher.EnableRaisingEvents = true;
        _watchers.Add(watcher);
    }
}
