using FlapAero.Handouts.Cache;

namespace FlapAero.Handouts.Tests.Cache;

public sealed class ContentCacheTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Find_Kept_GivesTheBytes()
    {
        var cache = new ContentCache(_folder);
        cache.Keep("key", [1, 2, 3]);

        Assert.Equal([1, 2, 3], new ContentCache(_folder).Find("key"));
        Assert.Null(cache.Find("other"));
    }

    [Fact]
    public void Find_UnderAnotherKeysName_IsNotBelieved()
    {
        new ContentCache(_folder).Keep("key", [1, 2, 3]);
        File.Move(Path.Combine(_folder, "key"), Path.Combine(_folder, "other"));

        Assert.Null(new ContentCache(_folder).Find("other"));
    }

    [Fact]
    public void Find_AnyByteChangedOrMissing_IsNotBelieved()
    {
        var cache = new ContentCache(_folder);
        cache.Keep("key", [1, 2, 3]);
        byte[] whole = File.ReadAllBytes(Path.Combine(_folder, "key"));
        for (int at = 0; at < whole.Length; at++)
        {
            byte[] changed = [.. whole];
            changed[at] ^= 0x10;
            File.WriteAllBytes(Path.Combine(_folder, "key"), changed);
            Assert.Null(cache.Find("key"));
            File.WriteAllBytes(Path.Combine(_folder, "key"), whole[..at]);
            Assert.Null(cache.Find("key"));
        }
    }

    [Fact]
    public void Keep_FolderThatIsAFile_CostsNothing()
    {
        string file = Path.Combine(_folder, "file");
        File.WriteAllText(file, "");
        var cache = new ContentCache(file);

        cache.Keep("key", [1]);

        Assert.Null(cache.Find("key"));
        cache.Tidy();
    }

    [Fact]
    public void Tidy_AMonthUnused_IsForgotten()
    {
        var cache = new ContentCache(_folder);
        cache.Keep("old", [1]);
        cache.Keep("new", [2]);
        File.SetLastWriteTimeUtc(Path.Combine(_folder, "old"), DateTime.UtcNow.AddDays(-31));

        cache.Tidy();

        Assert.Null(cache.Find("old"));
        Assert.NotNull(cache.Find("new"));
    }

    [Fact]
    public void ContentKey_PartsSplitElsewhere_GiveAnotherKey() =>
        Assert.NotEqual(new ContentKey("x").With("ab").With("c").ToString(), new ContentKey("x").With("a").With("bc").ToString());
}
