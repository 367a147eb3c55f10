using System.CommandLine;
using System.Diagnostics;
using Platewright.Cli.Display;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Report;
using Platewright.Study.Documents;
using Platewright.Study.Learning;
using Platewright.Study.Output;
using Platewright.Study.Pipeline;
using Platewright.Study.Store;

namespace Platewright.Cli.Commands;

/// <summary><c>platewright study PATH</c>: every part of every project on every machine, and what follows from it.</summary>
internal static class StudyCommand
{
    private const long StoreBytes = 2L << 30;

    public static Command Create(Screen screen, CancellationToken cancel)
    {
        Argument<string> path = new("PATH") { Description = "A study file (.toml) or a folder of models; a folder needs no set-up." };
        path.Validators.Add(Options.RefuseOptions);
        Option<string> folder = new("--out")
        {
            HelpName = "DIR",
            Description = "Where study.json, parts.csv and report.html go (default: out).",
            DefaultValueFactory = _ => "out",
        };
        Option<bool> noModels = new("--no-models") { Description = "Leave the geometry of the models out of the results; pictures stay." };
        Option<bool> hideNames = new("--hide-names")
        {
            Description = "Give projects, parts, files and the study neutral names and leave free notes out, to pass the results on.",
        };
        Option<bool> noEstimates = new("--no-estimates") { Description = "Leave out time, material and energy, which take longest." };
        Option<string?> storeFolder = Options.Store();
        Option<bool> json = Options.Json();
        MachineChoice machines = new();
        Command command = new("study", "Study a body of work: which machine can make which part, how sure that is, what a larger one would win.")
        {
            path, folder, json, noModels, hideNames, noEstimates, storeFolder,
        };
        machines.AddTo(command);
        command.SetAction(parsed =>
        {
            long start = Stopwatch.GetTimestamp();
            StudySource source = WithMachines(StudySource.Open(parsed.GetRequiredValue(path), cancel), machines.Of(parsed));
            if (Overlooked(parsed.GetRequiredValue(path)) is { } file)
                screen.Error.WriteLine($"The folder holds a study file; to use it: platewright study {file}");
            string kept = parsed.GetValue(storeFolder) ?? StoreFolder.Usual();
            using ResultStore store = ResultStore.Open(kept);
            StudyOutcome outcome = ProgressDisplay.During(
                screen, progress => StudyPipeline.Run(
                    source, new Sharing(WithModels: !parsed.GetValue(noModels), HideNames: parsed.GetValue(hideNames)),
                    withEstimates: !parsed.GetValue(noEstimates), LearnedMachines.Read(kept), store, progress, cancel));
            StudyDocument study = outcome.Document with { Seconds = Stopwatch.GetElapsedTime(start).TotalSeconds };
            IReadOnlyList<string> written = Write(study, parsed.GetRequiredValue(folder));
            store.Trim(StoreBytes);
            screen.Error.WriteLine(Effort(outcome));
            if (parsed.GetValue(json)) JsonOutput.Write(screen, study);
            else Show(study, written, screen);
            return ExitCode.For(study.Unusable.Count);
        });
        return command;
    }

    // A folder is studied as it is, even where a study file lies in it; whoever wrote one will want to know.
    private static string? Overlooked(string path) => Directory.Exists(path)
        ? Directory.EnumerateFiles(path, "*.toml").Order(StringComparer.Ordinal).FirstOrDefault()?.Replace('\\', '/')
        : null;

    private static StudySource WithMachines(StudySource source, IReadOnlyList<Machine> machines)
    {
        if (machines.Count == 0) return source;
        if (machines.GroupBy(m => m.Id, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new DescriptionException(new DescriptionError($"the machine \"{twice.Key}\" is named twice.", Key: "--machine"));
        return source with { Plan = source.Plan with { Machines = [.. machines] } };
    }

    private static IReadOnlyList<string> Write(StudyDocument study, string folder)
    {
        string json = Path.Combine(folder, "study.json"), csv = Path.Combine(folder, "parts.csv"), page = Path.Combine(folder, "report.html");
        AsideFile.Write(json, stream => StudyJson.Write(study, stream));
        AsideFile.Write(csv, stream => PartsCsv.Write(study, stream));
        ReportWriter.Write(study, page);
        return [json, csv, page];
    }

    private static void Show(StudyDocument study, IReadOnlyList<string> written, Screen screen)
    {
        new StudyView(study, screen.Result, screen.Columns).Write();
        Sentences.Write(screen.Result, "Written", written.Select(p => p.Replace('\\', '/')));
    }

    private static string Effort(StudyOutcome outcome)
    {
        string computed = outcome.Computed.Count == 0
            ? "nothing"
            : string.Join(", ", outcome.Computed.OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => $"{c.Value} {c.Key}"));
        return $"Computed: {computed}. Found in the store: {outcome.Found}.";
    }
}
