using FlapAero.Tests;

namespace FlapAero.Handouts.Tests;

/// <summary>The students' and the instructor's pages of the project's lessons, made once, when the first test asks for them.</summary>
public sealed class LessonPages : IAsyncDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-").FullName;
    private readonly Lazy<Task> _made;

    public LessonPages() => _made = new(MakeAsync);

    public ValueTask DisposeAsync()
    {
        Directory.Delete(_folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    /// <summary>The files of every lesson's instructor's page, in the lessons' order.</summary>
    public async Task<IReadOnlyList<string>> OfInstructorAsync()
    {
        await _made.Value;
        return [.. Directory.GetFiles(_folder, "*.instructor.html").Order(StringComparer.Ordinal)];
    }

    /// <summary>Where a lesson's page for students stands, as a browser is told it.</summary>
    public async Task<string> OfStudentAsync(string lesson)
    {
        await _made.Value;
        return new Uri(Path.Combine(_folder, lesson + ".html")).AbsoluteUri;
    }

    private async Task MakeAsync()
    {
        // What was run before and has not changed is not run again.
        var options = new HandoutOptions(RepositoryRoot.Path("notebooks"), _folder, [])
        {
            Editions = new HashSet<Edition> { Edition.Student, Edition.Instructor },
            CacheFolder = RepositoryRoot.Path("artifacts/cache"),
        };
        using KernelTurn turn = await KernelTurn.TakeAsync();
        using var builder = new HandoutBuilder();
        // The pages outlive the test that asks first.
        await builder.BuildAsync(options, null, CancellationToken.None);
    }
}
