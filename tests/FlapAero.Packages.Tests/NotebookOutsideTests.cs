using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.PackageManagement;

namespace FlapAero.Packages.Tests;

/// <summary>A notebook outside the checkout needs one <c>#r</c> and nothing else.</summary>
[Trait("Speed", "slow")]
public sealed class NotebookOutsideTests(PackedFeed packed)
{
    [Fact]
    public async Task Notebook_WithASingleReference_BeginsALessonAndShowsAFigure()
    {
        string before = Environment.CurrentDirectory;
        // A kernel's folder is its notebook's; beside the notebook stands the NuGet.config that names the feed.
        Environment.CurrentDirectory = await packed.FolderAsync("notebooks of a class");
        try
        {
            using var kernel = new CompositeKernel
            {
                new CSharpKernel().UseKernelHelpers().UseNugetDirective((csharp, packages) =>
                {
                    csharp.AddAssemblyReferences(packages.SelectMany(package => package.AssemblyPaths));
                    return Task.CompletedTask;
                }),
            };

            // As a student's notebook asks for it.
            string seed = await RunAsync(kernel, """
                #r "nuget: FlapAero.Notebooks, *-*"
                using FlapAero; using FlapAero.Charts; using FlapAero.Notebooks; using UnitsNet; var lesson = Lesson.Begin(seed: 7);
                lesson.Seed
                """);
            // Drawn by Plotly.NET, which asks for another FSharp.Core than the kernel's.
            string figure = await RunAsync(kernel, """
                var up = lesson.Aeroplane.Configure(lesson.Aeroplane.FlapsUp);
                var air = Air.AtTemperature(Length.FromFeet(600), Temperature.FromDegreesCelsius(20));
                double Stall(double bank) => up.StallSpeed(air, Angle.FromDegrees(bank)).Calibrated.Knots;
                new Figure("Stall in the turn", Axis.Of("bank", "φ", "°"), Axis.Of("stalling speed", "V_S", "kt CAS"))
                    .Line("flaps up", Samples.Between(0, 60, 5), Stall).Caption($"The stall rises with bank.").Finding($"It rises from {Stall(0):0.0} to {Stall(60):0.0} kt.")
                """);

            Assert.Contains("7", seed, StringComparison.Ordinal);
            Assert.Contains("<figure class=\"plot\"", figure, StringComparison.Ordinal);
            Assert.Contains("from 53.3 to 75.3 kt", figure, StringComparison.Ordinal);
        }
        finally
        {
            Environment.CurrentDirectory = before;
        }
    }

    private static async Task<string> RunAsync(Kernel kernel, string code)
    {
        KernelCommandResult result = await kernel.SendAsync(new SubmitCode(code), TestContext.Current.CancellationToken);
        Assert.Empty(result.Events.OfType<CommandFailed>().Select(failed => failed.Message));
        return result.Events.OfType<ReturnValueProduced>().Single().FormattedValues.First().Value;
    }
}
