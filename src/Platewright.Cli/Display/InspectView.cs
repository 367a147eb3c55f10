using System.Globalization;
using Platewright.Study.Documents;
using Spectre.Console;
using static Platewright.Cli.Display.TextGrid;

namespace Platewright.Cli.Display;

/// <summary>Inspected models as text: a line each, then what was found in them.</summary>
internal static class InspectView
{
    public static void Write(InspectDocument found, Screen screen)
    {
        IAnsiConsole console = screen.Result;
        ShortNames names = new([.. found.Models.Select(m => m.File)]);
        if (found.Models.Count > 0)
        {
            TextGrid grid = new(screen.Columns);
            grid.Add(Head("part"), Head("size, mm"), Head("triangles", right: true), Head("shells", right: true), Head("volume, cm³", right: true));
            foreach (InspectedModelDocument m in found.Models)
            {
                grid.Add(
                    names.Of(m.File, m.Part), Size(m), Right(m.Triangles.ToString(CultureInfo.InvariantCulture)),
                    Right(m.Shells.ToString(CultureInfo.InvariantCulture)),
                    m.VolumeMm3 is { } v ? Right((v / 1000).ToString("0.00", CultureInfo.InvariantCulture)) : Right("open", "yellow"));
            }
            grid.Write(console);
        }
        Sentences.Write(console, "Findings", found.Models.SelectMany(m => m.Findings.Select(f => $"{names.Of(m.File, m.Part)}: {f.Message}")));
        Sentences.Write(console, "Not used", found.Unusable.Select(u => u.Error));
    }

    private static string Size(InspectedModelDocument m) =>
        string.Join(" × ", m.BoundsMm.Max.Zip(m.BoundsMm.Min, (max, min) => BuildVolumeText.Mm(max - min)));

    private static Cell Head(string text, bool right = false) => new(text, "bold", right);

    private static Cell Right(string text, string? style = null) => new(text, style, Right: true);
}
