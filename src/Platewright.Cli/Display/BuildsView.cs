using System.Globalization;
using Platewright.Study.Documents;
using Spectre.Console;
using static Platewright.Cli.Display.TextGrid;

namespace Platewright.Cli.Display;

/// <summary>What building takes, as text: time and energy of each part on each machine, then all that each machine can make.</summary>
internal sealed class BuildsView(StudyDocument study, IAnsiConsole console, int columns)
{
    /// <summary>Width of a cell, as "12:34 h 1.23 kWh ".</summary>
    private const int CellColumns = 18;

    public void Write()
    {
        if (study.Machines.All(m => m.Builds is null)) return;
        console.WriteLine();
        console.MarkupLine("[bold]Time and energy of each part[/], one copy, warm-up and release included; how far they may be off is in parts.csv");
        int atOnce = Math.Max(1, (columns - StudyView.NameColumns) / CellColumns);
        foreach (int[] shown in Enumerable.Range(0, study.Machines.Count).Chunk(atOnce)) WriteParts(shown);
        WriteMachines();
    }

    private void WriteParts(int[] machines)
    {
        console.WriteLine();
        TextGrid grid = new(columns);
        grid.Add([new Cell("part", "bold"), new Cell("material", "bold"), .. machines.Select(m => new Cell(StudyView.Letter(m), "bold"))]);
        PartDocument[] estimated = [.. study.Parts.Where(p => p.Fits.Any(f => f.Estimate is not null))];
        foreach (PartDocument part in estimated.Take(StudyView.MostRows))
        {
            double mass = part.Fits.Select(f => f.Estimate?.MassG).OfType<double>().Min();
            grid.Add([new Cell(part.Name), new Cell(Invariant($"{mass:0} g")), .. machines.Select(m => new Cell(Text(part.Fits[m].Estimate)))]);
        }
        grid.Write(console);
        if (estimated.Length > StudyView.MostRows)
            console.WriteLine($"… and {estimated.Length - StudyView.MostRows} more parts: see parts.csv.");
    }

    private static string Text(PartEstimateDocument? e) => e switch
    {
        null => "–",
        { EnergyKwh: { } energy } => Invariant($"{DurationText.Of(e.TimeS.Total)} {energy.Total:0.00} kWh"),
        _ => DurationText.Of(e.TimeS.Total),
    };

    private void WriteMachines()
    {
        console.WriteLine();
        console.MarkupLine("[bold]Building all it can make[/], each copy by itself; the range is 95 % and holds for the sum as a whole");
        TextGrid grid = new(columns);
        grid.Add(
            "", new Cell("parts", "bold"), new Cell("time", "bold"), new Cell("warm-up and release", "bold"),
            new Cell("material", "bold"), new Cell("energy", "bold"), new Cell("peak", "bold"));
        for (int m = 0; m < study.Machines.Count; m++)
        {
            if (study.Machines[m].Builds is not { } b) continue;
            grid.Add(
                $"{StudyView.Letter(m)}  {study.Machines[m].Name}", $"{b.Parts}",
                $"{DurationText.Of(b.TimeS)} ({DurationText.Of(b.LowTimeS)} to {DurationText.Of(b.HighTimeS)})",
                Invariant($"{100 * b.WarmUpShare:0} %"), Invariant($"{b.MassG / 1000:0.00} kg"),
                b.EnergyKwh is { } kwh ? Invariant($"{kwh:0.0} kWh") : "not counted", b.PeakPowerW is { } peak ? Invariant($"{peak:0} W") : "");
        }
        grid.Write(console);
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
