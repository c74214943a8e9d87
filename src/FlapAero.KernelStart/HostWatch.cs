using System.Diagnostics;

namespace FlapAero.KernelStart;

/// <summary>
/// Waits for the kernel's host to be built, by the event that .NET's hosting publishes for tools, and hands over its
/// services while nothing has run yet.
/// </summary>
internal sealed class HostWatch : IObserver<DiagnosticListener>, IObserver<KeyValuePair<string, object?>>
{
    public static void Begin() => DiagnosticListener.AllListeners.Subscribe(new HostWatch());

    public void OnNext(DiagnosticListener listener)
    {
        if (listener.Name == "Microsoft.Extensions.Hosting")
            listener.Subscribe(this);
    }

    public void OnNext(KeyValuePair<string, object?> fact)
    {
        if (fact.Key != "HostBuilt" || fact.Value is not { } host)
            return;
        try
        {
            if (host.GetType().GetProperty("Services")?.GetValue(host) is IServiceProvider services)
                RunningKernel.Prepare(services);
        }
        catch (Exception e)
        {
            // A kernel without our preparation is worth more than none; Jupyter's log says what it lacks.
            Console.Error.WriteLine($"FlapAero: the kernel could not be prepared, so that errors show unedited: {e.Message}");
        }
    }

    public void OnCompleted()
    {
    }

    public void OnError(Exception error)
    {
    }
}
