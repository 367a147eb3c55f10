using Platewright.Study.Pipeline;
using Spectre.Console;

namespace Platewright.Cli.Display;

/// <summary>Progress on a terminal: a bar for each stage, gone when the work is done.</summary>
internal sealed class ProgressBars(ProgressContext context) : IProgressListener
{
    private ProgressTask? _task;

    public void Begin(string stage, int items)
    {
        _task?.StopTask();
        _task = context.AddTask(Markup.Escape(stage), maxValue: Math.Max(1, items));
    }

    public void Advance(string what) => _task?.Increment(1);
}
