using System.Threading.Channels;
using FlapAero.Notebooks;

namespace FlapAero.Handouts.Kernels;

/// <summary>The inside of a kernel's process: runs the cells it is sent until nobody sends any more.</summary>
public static class KernelServer
{
    private const int LongestRequest = 64_000_000;

    private const string First = "1";

    /// <summary>Serves over this process's standard input and output. Returns once the other end is gone, even from within a cell.</summary>
    /// <param name="cancellationToken">Stops serving.</param>
    public static async Task ServeAsync(CancellationToken cancellationToken)
    {
        await using Stream input = Console.OpenStandardInput();
        await using Stream output = Console.OpenStandardOutput();
        // What a cell writes goes to the kernel; what anybody else writes must not mix with the messages.
        Console.SetOut(TextWriter.Null);
        Console.SetIn(TextReader.Null);
        Formatters.KeepKeysApart();
        SchoolBeside.LookForNone();
        Task rehearsal = Task.Run(Rehearsal.Run, cancellationToken);
        try
        {
            KernelMessages.Hello hello = await KernelMessages.ReadAsync<KernelMessages.Hello>(input, LongestRequest, cancellationToken).ConfigureAwait(false);
            await KernelMessages.WriteAsync(output, new KernelMessages.Hello(KernelMessages.Build, 0), cancellationToken).ConfigureAwait(false);
            var requests = Channel.CreateUnbounded<KernelMessages.Request>();
            Task reading = ReadAsync(input, requests.Writer, cancellationToken);
            Task serving = AnswerAsync(requests.Reader, output, hello.CellOutput, rehearsal, cancellationToken);
            await (await Task.WhenAny(reading, serving).ConfigureAwait(false)).ConfigureAwait(false);
        }
        catch (IOException)
        {
            // The command has ended, or has no more lessons; EndOfStreamException is one of these.
        }
    }

    private static async Task ReadAsync(Stream input, ChannelWriter<KernelMessages.Request> requests, CancellationToken cancellationToken)
    {
        while (true)
        {
            KernelMessages.Request request = await KernelMessages.ReadAsync<KernelMessages.Request>(input, LongestRequest, cancellationToken).ConfigureAwait(false);
            await requests.WriteAsync(request, cancellationToken).ConfigureAwait(false);
        }
    }

    private static async Task AnswerAsync(
        ChannelReader<KernelMessages.Request> requests, Stream output, int cellOutput, Task rehearsal, CancellationToken cancellationToken)
    {
        InteractiveKernel? kernel = null;
        await foreach (KernelMessages.Request request in requests.ReadAllAsync(cancellationToken).ConfigureAwait(false))
        {
            CellResult result;
            if (request.Code is { } code && kernel is not null)
            {
                result = await kernel.RunAsync(code, cancellationToken).ConfigureAwait(false);
            }
            else
            {
                kernel?.Dispose();
                kernel = new InteractiveKernel(cellOutput);
                // A first cell takes longer than the others, for then the compiler is compiled: not on the lesson's time.
                kernel.Expect([First, .. request.Expected]);
                result = await kernel.RunAsync(First, cancellationToken).ConfigureAwait(false);
                // It chooses units as lessons do, so it must be over. Its faults would be a lesson's too, which says them better.
                await rehearsal.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            }
            var reply = new KernelMessages.Reply([.. result.Outputs.Select(KernelMessages.Output.Of)], result.Failure);
            await KernelMessages.WriteAsync(output, reply, cancellationToken).ConfigureAwait(false);
        }
    }
}
