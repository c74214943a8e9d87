using FlapAero.Handouts.NotebookForm;

namespace FlapAero.Handouts.Tests.NotebookForm;

public sealed class NotebookFilesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("flapaero-files-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Replace_File_HasTheNewBytesAndLeavesNothingBeside()
    {
        string file = Put("01-turn.ipynb");

        NotebookFiles.Replace(file, "new"u8);

        Assert.Equal("new", File.ReadAllText(file));
        Assert.Equal([file], Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void Replace_CannotBeWritten_LeavesTheOldFile()
    {
        string file = Put("01-turn.ipynb");
        string folder = Directory.CreateDirectory(Path.Combine(_folder, "02-folder.ipynb")).FullName;

        Assert.ThrowsAny<IOException>(() => NotebookFiles.Replace(folder, "new"u8));
        Assert.ThrowsAny<IOException>(() => NotebookFiles.Replace(Path.Combine(_folder, "none", "03-x.ipynb"), "new"u8));
        Assert.Equal("old", File.ReadAllText(file));
        Assert.True(Directory.Exists(folder));
    }

    [Fact]
    public void Replace_ModeAndLink_Stay()
    {
        if (OperatingSystem.IsWindows())
            return;
        string file = Put("01-turn.ipynb");
        File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupWrite);
        string link = Path.Combine(_folder, "link.ipynb");
        File.CreateSymbolicLink(link, file);

        NotebookFiles.Replace(link, "new"u8);

        Assert.Equal("new", File.ReadAllText(file));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupWrite, File.GetUnixFileMode(file));
        Assert.NotNull(File.ResolveLinkTarget(link, returnFinalTarget: false));
    }

    [Fact]
    public void Find_FolderFileOrNothing_GivesNotebooksOrSaysSo()
    {
        string second = Put("02-lull.ipynb"), first = Put("01-turn.ipynb");
        Put("notes.txt");

        Assert.Equal([first, second], NotebookFiles.Find(_folder));
        Assert.Equal([second], NotebookFiles.Find(second));
        Assert.Contains("no such notebook", Assert.Throws<FileNotFoundException>(() => NotebookFiles.Find(Path.Combine(_folder, "x"))).Message, StringComparison.Ordinal);
    }

    private string Put(string name)
    {
        string file = Path.Combine(_folder, name);
        File.WriteAllText(file, "old");
        return file;
    }
}
