using System.Diagnostics;
using Platewright.Study.Pipeline;

namespace Platewright.Cli.Display;

/// <summary>Progress where nothing can be redrawn: a plain line now and then.</summary>
internal sealed class ProgressLines(TextWriter writer) : IProgressListener
{
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    private readonly Lock _gate = new();
    private readonly Stopwatch _sinceLastLine = Stopwatch.StartNew();
    private string _stage = "";
    private int _items;
    private int _done;

    public void Begin(string stage, int items)
    {
        lock (_gate)
        {
            (_stage, _items, _done) = (stage, items, 0);
        }
    }

    public void Advance(string what)
    {
        lock (_gate)
        {
            _done++;
            if (_sinceLastLine.Elapsed < Pause) return;
            _sinceLastLine.Restart();
            writer.WriteLine($"{_stage}: {_done} of {_items}");
        }
    }
}
