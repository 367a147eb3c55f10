using System.CommandLine;
using Platewright.Cli.Display;
using Platewright.Formats.Toml;
using Platewright.Study.Documents;
using Platewright.Study.Learning;
using Platewright.Study.Output;
using Platewright.Study.Store;
using static Platewright.Cli.Display.TextGrid;

namespace Platewright.Cli.Commands;

/// <summary><c>platewright learn LOG.csv</c>: what past jobs say about each machine's estimates.</summary>
internal static class LearnCommand
{
    public static Command Create(Screen screen, CancellationToken cancel)
    {
        Argument<string> log = new("LOG") { Description = "A CSV file of jobs that really ran." };
        log.Validators.Add(Options.RefuseOptions);
        Option<bool> blank = new("--blank") { Description = "Write an empty log to LOG, with a line that says how to fill it." };
        Option<string?> storeFolder = Options.Store();
        Option<bool> json = Options.Json();
        Command command = new("learn", "Learn from jobs that really ran: estimates then show what each machine really takes, and how sure that is.")
        {
            log, blank, storeFolder, json,
        };
        command.SetAction(parsed =>
        {
            string path = parsed.GetRequiredValue(log);
            if (parsed.GetValue(blank))
            {
                if (File.Exists(path)) throw new DescriptionException(new DescriptionError("it is there already; name another.", path));
                AsideFile.Write(path, stream => stream.Write(System.Text.Encoding.UTF8.GetBytes(JobLog.Blank)));
                screen.Error.WriteLine($"Written: {path.Replace('\\', '/')}");
                return ExitCode.Done;
            }
            (LearnDocument document, LearnedMachines learned) =
                ProgressDisplay.During(screen, progress => new LearnRun(path).Run(progress, cancel));
            learned.Keep(parsed.GetValue(storeFolder) ?? StoreFolder.Usual());
            if (parsed.GetValue(json)) JsonOutput.Write(screen, document);
            else Show(document, screen);
            return ExitCode.For(document.Unusable.Count);
        });
        return command;
    }

    private static void Show(LearnDocument document, Screen screen)
    {
        TextGrid grid = new(screen.Columns);
        grid.Add(
            new Cell("machine", "bold"), new Cell("jobs", "bold"), new Cell("time, measured over estimated", "bold"),
            new Cell("energy", "bold"));
        foreach (LearnedDocument m in document.Machines) grid.Add(m.Machine, $"{m.Jobs}", Text(m.Time), Text(m.Energy));
        grid.Write(screen.Result);
        Sentences.Write(screen.Result, "Not used", document.Unusable.Select(u => u.Error));
    }

    private static string Text(CorrectionDocument? c) => c is null
        ? "too few jobs, three are needed"
        : FormattableString.Invariant(
            $"× {c.Factor:0.00}; the next job lies within {100 * c.Low:0} to +{100 * c.High:0} % of the corrected estimate (95 %, {c.Jobs} jobs)");
}
