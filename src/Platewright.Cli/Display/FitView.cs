using System.Globalization;
using Platewright.Study.Documents;
using Spectre.Console;

namespace Platewright.Cli.Display;

/// <summary>Fits as text: for each part a line for each machine, with its reasons.</summary>
internal static class FitView
{
    public static void Write(FitsDocument fits, Screen screen)
    {
        IAnsiConsole console = screen.Result;
        ShortNames names = new([.. fits.Fits.Select(f => f.File)]);
        bool first = true;
        foreach (var part in fits.Fits.GroupBy(f => (f.File, f.Part)))
        {
            if (!first) console.WriteLine();
            first = false;
            console.MarkupLineInterpolated($"[bold]{names.Of(part.Key.File, part.Key.Part)}[/]");
            TextGrid grid = new(screen.Columns);
            foreach (FitRowDocument f in part)
            {
                string countsAs = CountsAs(f.Verdict);
                string cell = VerdictCell.Of(f.Verdict, countsAs, f.Tight, f.CanMake, f.Tilted.LargestScale);
                grid.Add($"  {f.Machine}", new TextGrid.Cell(cell, VerdictCell.Colour(countsAs)), Largest(f));
            }
            grid.Write(console);
            foreach (FitRowDocument f in part) Sentences.WriteOne(console, $"{f.Machine}: {string.Join(' ', f.Reasons)}");
        }
        Sentences.Write(console, "Not used", fits.Unusable.Select(u => u.Error));
    }

    private static string Largest(FitRowDocument f) => string.Create(CultureInfo.InvariantCulture,
        $"largest: {100 * f.AsDrawn.LargestScale:0.0} % as drawn, {100 * f.Turned.LargestScale:0.0} % turned, {100 * f.Tilted.LargestScale:0.0} % tilted (proved below {100 * f.Tilted.UpperBound:0.00} %)");

    private static string CountsAs(string verdict) => verdict switch
    {
        "as_drawn" or "turned" => "fits",
        "no" => "no",
        _ => "compromise",
    };
}
