using System.CommandLine;
using Platewright.Cli.Display;
using Platewright.Study.Documents;
using Platewright.Study.Examining;
using Platewright.Study.Pipeline;

namespace Platewright.Cli.Commands;

/// <summary><c>platewright inspect MODEL…</c>: what is in the files, and what is wrong with it.</summary>
internal static class InspectCommand
{
    public static Command Create(Screen screen, CancellationToken cancel)
    {
        Argument<string[]> models = Options.Models();
        Option<bool> json = Options.Json();
        ReadingChoice reading = new();
        Command command = new("inspect", "Read models; say their size, volume, shells and what would trouble a print.") { models, json };
        reading.AddTo(command);
        command.SetAction(parsed =>
        {
            ExamineOptions options = reading.Of(parsed);
            InspectDocument found = ProgressDisplay.During(
                screen, progress => InspectRun.Of(parsed.GetRequiredValue(models), options, progress, cancel));
            if (parsed.GetValue(json)) JsonOutput.Write(screen, found);
            else InspectView.Write(found, screen);
            return ExitCode.For(found.Unusable.Count);
        });
        return command;
    }
}
