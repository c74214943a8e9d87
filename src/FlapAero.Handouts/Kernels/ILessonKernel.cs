namespace FlapAero.Handouts.Kernels;

/// <summary>Runs the code cells of one lesson, one after the other, each seeing what the earlier ones declared.</summary>
/// <remarks>The only door to the kernel's packages: another kernel is another class behind this interface.</remarks>
public interface ILessonKernel : IDisposable
{
    /// <summary>Says which cells will be run, in their order, so that they can be compiled ahead. Any other may be run all the same.</summary>
    /// <param name="cells">Their C#.</param>
    void Expect(IReadOnlyList<string> cells);

    /// <summary>Runs one cell.</summary>
    /// <param name="code">The cell's C#.</param>
    /// <param name="cancellationToken">Gives up waiting for the cell.</param>
    /// <returns>What the cell put out, and in words why it failed if it did.</returns>
    Task<CellResult> RunAsync(string code, CancellationToken cancellationToken);
}
