namespace FlapAero.Notebooks;

/// <summary>
/// The school's file that lies where the notebook is, or in the folder above. Pages take no file that nobody named to their command: the
/// kernels that make them look for none.
/// </summary>
internal static class SchoolBeside
{
    private static bool _isLookedFor = true;

    /// <summary>No lesson of this process looks for a file.</summary>
    public static void LookForNone() => _isLookedFor = false;

    /// <summary>The school where a notebook runs; none where no file lies there.</summary>
    /// <exception cref="AeroplaneFileException">The file makes no school.</exception>
    public static School? Find() => _isLookedFor ? Read(Directory.GetCurrentDirectory()) : null;

    /// <summary>The school of the notebooks in a folder; none where no file lies there.</summary>
    /// <exception cref="AeroplaneFileException">The file makes no school.</exception>
    public static School? Read(string notebooks) => In(notebooks) is { } file ? School.Read(file) : null;

    /// <summary>The file among the notebooks of a folder or above them; none where there is none.</summary>
    public static string? In(string notebooks)
    {
        string[] places = [Path.Combine(notebooks, School.FileName), Path.GetFullPath(Path.Combine(notebooks, "..", School.FileName))];
        return places.FirstOrDefault(File.Exists);
    }
}
