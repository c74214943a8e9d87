namespace FlapAero.Tests;

/// <summary>Where the checkout is, found from where the tests run.</summary>
internal static class RepositoryRoot
{
    private static readonly string Root = Find();

    public static string Path(string relative) => System.IO.Path.Combine(Root, relative);

    private static string Find()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(System.IO.Path.Combine(folder.FullName, "FlapAero.sln"))) return folder.FullName;
        throw new DirectoryNotFoundException("FlapAero.sln is in no folder above the tests.");
    }
}
