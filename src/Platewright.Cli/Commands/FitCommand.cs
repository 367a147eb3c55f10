using System.CommandLine;
using System.Text.Json;
using Platewright.Cli.Display;
using Platewright.Fit;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Study.Documents;
using Platewright.Study.Output;
using Platewright.Study.Pipeline;

namespace Platewright.Cli.Commands;

/// <summary><c>platewright fit MODEL… --machine M…</c>: the proved verdict for every part on every machine.</summary>
internal static class FitCommand
{
    private const double LeastTolerance = 1e-10;
    private const double MostTolerance = 0.1;

    public static Command Create(Screen screen, CancellationToken cancel)
    {
        Argument<string[]> models = Options.Models();
        MachineChoice machines = new();
        AllowanceChoice allowance = new();
        ReadingChoice reading = new();
        Option<string?> material = new("--material")
        {
            HelpName = "T",
            Description = "What the parts are made of, as PETG: its shrinkage, its brim and the heat it needs count.",
        };
        Option<double?> margin = Options.Number("--margin", "MM", "One margin at every wall and the top, mm, in place of the machines' own.");
        Option<double?> tolerance = Options.Number(
            "--tolerance", "REL", "Relative gap between the scale reached and the one proved impossible (default 0.0001).");
        Option<double?> tight = Options.Number("--tight", "MM", "A fit with less clearance than this is called tight, mm (default 2).");
        Option<string?> proof = new("--proof")
        {
            HelpName = "FILE",
            Description = "Write the proofs to this file, for platewright verify.",
        };
        Option<bool> json = Options.Json();
        Command command = new("fit", "Say whether each part fits each machine, how, and how large it may be at most; with proof.") { models };
        machines.AddTo(command);
        foreach (Option option in new Option[] { material, margin, tolerance, tight, proof }) command.Options.Add(option);
        allowance.AddTo(command);
        command.Options.Add(json);
        reading.AddTo(command);
        command.SetAction(parsed =>
        {
            FitOptions usual = new();
            IReadOnlyList<Machine> chosen = Required(machines.Of(parsed));
            if (parsed.GetValue(margin) is { } mm) chosen = [.. chosen.Select(m => MachineArguments.WithMargin(m, mm))];
            FitRun run = new(
                parsed.GetRequiredValue(models), chosen,
                parsed.GetValue(material) is { } name ? MaterialCatalog.Get(name) : null, allowance.Of(parsed), reading.Of(parsed),
                usual with
                {
                    Tolerance = Within(tolerance, parsed.GetValue(tolerance), LeastTolerance, MostTolerance) ?? usual.Tolerance,
                    TightMm = Within(tight, parsed.GetValue(tight), 0, double.MaxValue) ?? usual.TightMm,
                },
                WithProof: parsed.GetValue(proof) is not null);
            FitOutcome outcome = ProgressDisplay.During(screen, progress => run.Run(progress, cancel));
            if (parsed.GetValue(proof) is { } file)
                AsideFile.Write(file, stream => JsonSerializer.Serialize(stream, outcome.Proofs, DocumentJson.Compact));
            foreach (string sentence in outcome.NotProved) screen.Error.WriteLine(sentence);
            if (parsed.GetValue(json)) JsonOutput.Write(screen, outcome.Fits);
            else FitView.Write(outcome.Fits, screen);
            return ExitCode.For(outcome.Fits.Unusable.Count);
        });
        return command;
    }

    private static IReadOnlyList<Machine> Required(IReadOnlyList<Machine> machines) => machines.Count > 0
        ? machines
        : throw new DescriptionException(new DescriptionError("name at least one machine with --machine, --box or --cylinder."));

    private static double? Within(Option option, double? value, double least, double most) =>
        value is null || (value >= least && value <= most)
            ? value
            : throw new DescriptionException(new DescriptionError(
                most < double.MaxValue ? $"expected a number from {least} to {most}, found {value}." : $"expected a number of {least} or more, found {value}.",
                Key: option.Name));
}
