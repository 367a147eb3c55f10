using Platewright.Study.Pipeline;
using Spectre.Console;

namespace Platewright.Cli.Display;

/// <summary>Shows progress on standard error while work runs: bars on a terminal, plain lines elsewhere.</summary>
internal static class ProgressDisplay
{
    public static T During<T>(Screen screen, Func<IProgressListener, T> work) =>
        screen.DrawsProgress
            ? screen.Messages.Progress()
                .AutoClear(true)
                .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
                .Start(context => work(new ProgressBars(context)))
            : work(new ProgressLines(screen.Error));
}
