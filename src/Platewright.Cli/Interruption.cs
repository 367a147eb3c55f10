using System.Runtime.InteropServices;

namespace Platewright.Cli;

/// <summary>Turns Ctrl-C and a polite request to end into a cancellation. A second one ends the process at once.</summary>
internal sealed class Interruption : IDisposable
{
    private readonly CancellationTokenSource _source = new();
    private readonly PosixSignalRegistration[] _signals;

    public Interruption() => _signals =
    [
        PosixSignalRegistration.Create(PosixSignal.SIGINT, Cancel),
        PosixSignalRegistration.Create(PosixSignal.SIGTERM, Cancel),
    ];

    public CancellationToken Token => _source.Token;

    public void Dispose()
    {
        foreach (PosixSignalRegistration signal in _signals) signal.Dispose();
        _source.Dispose();
    }

    private void Cancel(PosixSignalContext context)
    {
        if (_source.IsCancellationRequested) return;
        context.Cancel = true;
        _source.Cancel();
    }
}
