using System.Globalization;
using System.Text;
using Platewright.Study.Documents;

namespace Platewright.Study.Output;

/// <summary>parts.csv: one row for each part on each machine, as RFC 4180 has it (commas, quotes doubled, CRLF).</summary>
public static class PartsCsv
{
    private static readonly string[] Header =
    [
        "project", "part", "file", "object", "wanted", "quantity", "material", "colour", "any_of",
        "size_x_mm", "size_y_mm", "size_z_mm", "machine", "verdict", "counts_as", "tight", "can_make", "proved", "pieces",
        "as_drawn_scale", "upright_scale", "turned_scale", "tilted_scale", "tilted_upper_bound", "clearance_mm", "recipe", "pose", "time_s", "time_low_s", "time_high_s", "warm_up_s", "release_s", "material_mm3",
        "support_mm3", "mass_g", "spools", "energy_kwh", "peak_power_w", "cost", "currency", "reasons", "made_by", "licence",
    ];

    public static void Write(StudyDocument study, Stream stream)
    {
        using StreamWriter writer = new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        writer.NewLine = "\r\n";
        writer.WriteLine(string.Join(',', Header));
        Dictionary<string, string> projects = study.Projects.ToDictionary(p => p.Id, p => p.Name);
        Dictionary<string, string> machines = study.Machines.ToDictionary(m => m.Id, m => m.Name);
        foreach (PartDocument part in study.Parts)
        {
            foreach (PartFitDocument fit in part.Fits)
                writer.WriteLine(string.Join(',', Row(part, fit, projects[part.Project], machines[fit.Machine], study.Sizing?.Currency).Select(Cell)));
        }
    }

    private static IEnumerable<object?> Row(PartDocument part, PartFitDocument fit, string project, string machine, string? currency) =>
    [
        project, part.Name, part.File, part.Object, part.Wanted, part.Quantity, part.Material, part.Colour, part.AnyOf,
        .. part.SizeMm.Cast<object>(), machine, fit.Verdict, fit.CountsAs, fit.Tight, fit.CanMake, fit.Proved, fit.Pieces,
        fit.AsDrawn.LargestScale, fit.Upright.LargestScale, fit.Turned.LargestScale, fit.Tilted.LargestScale,
        fit.Tilted.UpperBound, fit.ClearanceMm, .. Build(fit.Estimate), fit.Cost, fit.Cost is null ? null : currency, string.Join(' ', fit.Reasons),
        part.MadeBy, part.Licence,
    ];

    private static IEnumerable<object?> Build(PartEstimateDocument? e) => e is null
        ? Enumerable.Repeat<object?>(null, BuildColumns)
        :
        [
            e.Recipe, e.Pose.Way, e.TimeS.Total, e.TimeS.Total * (1 + e.TimeError.Low), e.TimeS.Total * (1 + e.TimeError.High),
            e.TimeS.WarmUp, e.TimeS.Release, e.MaterialMm3, e.SupportMm3, e.MassG, e.Spools, e.EnergyKwh?.Total, e.PeakPowerW,
        ];

    private const int BuildColumns = 13;

    private static string Cell(object? value) => value switch
    {
        null => "",
        bool b => b ? "true" : "false",
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
        _ => Quoted(value.ToString()!),
    };

    private static string Quoted(string text) =>
        text.AsSpan().ContainsAny("\",\r\n") ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
