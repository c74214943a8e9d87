using System.Runtime.CompilerServices;
using System.Text;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.CSharp;

namespace FlapAero.KernelStart;

/// <summary>What is changed in the kernel, once, before its first cell.</summary>
internal static class RunningKernel
{
    public static void Prepare(IServiceProvider services)
    {
        if (services.GetService(typeof(Kernel)) is not Kernel kernel)
            return;
        LeaveOutHostAddresses(kernel);
        foreach (CSharpKernel csharp in ((CompositeKernel)kernel).ChildKernels.OfType<CSharpKernel>())
        {
            KnowLines(csharp);
            LessonPackage.Serve(csharp);
            // Before the words take the exception away.
            AnswersThatFailed.Watch(kernel, csharp);
        }
        kernel.KernelEvents.Subscribe(new ErrorsInWords());
        kernel.KernelEvents.Subscribe(new CompletionsAsNames());
    }

    /// <summary>Else the first output of a notebook carries a script with the machine's network addresses.</summary>
    private static void LeaveOutHostAddresses(Kernel kernel) =>
        (kernel.FrontendEnvironment.GetType().GetProperty("RequiresAutomaticBootstrapping")
            ?? throw new MissingMemberException("the kernel has no RequiresAutomaticBootstrapping"))
        .SetValue(kernel.FrontendEnvironment, false);

    /// <summary>With the compiler's notes about lines an error can say in which line of the cell it arose.</summary>
    private static void KnowLines(CSharpKernel kernel) =>
        OptionsOf(kernel) = OptionsOf(kernel).WithEmitDebugInformation(true).WithFileEncoding(Encoding.UTF8);

    [UnsafeAccessor(UnsafeAccessorKind.Field, Name = "_scriptOptions")]
    private static extern ref ScriptOptions OptionsOf(CSharpKernel kernel);
}
