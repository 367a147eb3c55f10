using System.Globalization;
using Platewright.Study.Documents;
using Spectre.Console;

namespace Platewright.Cli.Display;

/// <summary>Estimates as text: for each part a line for each machine, then where its time goes.</summary>
internal static class EstimateView
{
    public static void Write(EstimatesDocument estimates, Screen screen)
    {
        IAnsiConsole console = screen.Result;
        ShortNames names = new([.. estimates.Estimates.Select(f => f.File)]);
        bool first = true;
        foreach (var part in estimates.Estimates.GroupBy(f => (f.File, f.Part)))
        {
            if (!first) console.WriteLine();
            first = false;
            EstimateRowDocument any = part.First();
            string how = any.Recipe is { } recipe ? $", {recipe}" : "";
            console.MarkupLineInterpolated($"[bold]{names.Of(part.Key.File, part.Key.Part)}[/] ({any.Material}{how}, {any.Layers} layers)");
            TextGrid grid = new(screen.Columns);
            foreach (EstimateRowDocument e in part)
                grid.Add($"  {e.Machine}{(part.Any(o => o.BoreMm != e.BoreMm) ? $", bore {e.BoreMm:0.0#} mm" : "")}", new TextGrid.Cell(Time(e), "bold"), Material(e), Energy(e));
            grid.Write(console);
            foreach (EstimateRowDocument e in part) Sentences.WriteOne(console, $"{e.Machine}: {Shares(e.TimeS)}.");
            foreach (string note in part.SelectMany(e => e.Notes).Distinct(StringComparer.Ordinal)) Sentences.WriteOne(console, note);
        }
        Sentences.Write(console, "Not used", estimates.Unusable.Select(u => u.Error));
    }

    private static string Time(EstimateRowDocument e) =>
        $"{DurationText.Of(e.TimeS.Total)} ({DurationText.Of(Math.Max(0, e.TimeS.Total * (1 + e.TimeError.Low)))} to {DurationText.Of(e.TimeS.Total * (1 + e.TimeError.High))})";

    private static string Material(EstimateRowDocument e) =>
        string.Create(CultureInfo.InvariantCulture, $"{e.MassG:0.0} g, {e.FilamentMm / 1000:0.0} m");

    private static string Energy(EstimateRowDocument e) => e.EnergyKwh.Total > 0
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"{e.EnergyKwh.Total:0.00} kWh ±{100 * Math.Max(-e.EnergyError.Low, e.EnergyError.High):0} %, peak {e.PeakPowerW:0} W")
        : "energy not counted";

    private static string Shares(TimeDocument t)
    {
        (string Name, double? Seconds)[] parts =
        [
            ("warm-up", t.WarmUp), ("walls", t.Walls), ("solid faces", t.SolidFaces), ("infill", t.Infill),
            ("support", t.Support), ("brim", t.Brim), ("extruding", t.Extruding), ("travel", t.Travel),
            ("waiting", t.Waiting), ("changes", t.Changes), ("release", t.Release),
        ];
        return string.Join(", ", parts.Where(p => p.Seconds > 0).Select(p => $"{p.Name} {DurationText.Of(p.Seconds!.Value)}"));
    }
}
