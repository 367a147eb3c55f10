using System.Globalization;
using System.Text;
using System.Text.Json;
using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Study.Pipeline;

/// <summary>
/// What decides a result, written in one way only, for its key. Whatever changes an answer must be here; names, prices and notes
/// must not.
/// </summary>
internal static class CanonicalText
{
    public static string Of(Machine machine)
    {
        StringBuilder text = new();
        switch (machine.BuildVolume)
        {
            case BoxVolume box:
                Add(text, "box", box.WidthMm, box.DepthMm, box.HeightMm);
                break;
            case CylinderVolume round:
                Add(text, "cylinder", round.DiameterMm, round.HeightMm);
                break;
            case PrismVolume prism:
                Add(text, "prism", [prism.HeightMm, .. prism.PolygonMm.SelectMany(p => new[] { p.X, p.Y })]);
                break;
            default:
                throw new ArgumentException($"No such build volume: {machine.BuildVolume.GetType().Name}.", nameof(machine));
        }
        Margins m = machine.Margins;
        Add(text, "margins", m.LeftMm, m.RightMm, m.FrontMm, m.BackMm, m.TopMm);
        foreach (Bounds3 k in machine.KeepOuts) Add(text, "keep_out", k.Min.X, k.Min.Y, k.Min.Z, k.Max.X, k.Max.Y, k.Max.Z);
        return text.ToString();
    }

    /// <summary>A machine as a build meets it: its volume, drives, extruder, heaters, and how well they are known.</summary>
    public static string OfBuild(Machine machine) => Of(machine) + JsonSerializer.Serialize(new
    {
        machine.Motion,
        machine.Extruder,
        machine.Handling,
        machine.Heating,
        machine.HeatsTo,
        machine.Enclosed,
        machine.Ranges,
    });

    public static string Of(FitOptions options) => Numbers(
        "fit", options.Tolerance, options.SettledTolerance ?? options.Tolerance, options.TightMm, options.MostCells, options.MostPieces);

    public static string Of(Allowance allowed) => Numbers(
        "allow", allowed.Turn ? 1 : 0, allowed.Tilt ? 1 : 0, allowed.Cut ? 1 : 0, allowed.LeastScale);

    public static string Numbers(string name, params ReadOnlySpan<double> numbers)
    {
        StringBuilder text = new();
        Add(text, name, numbers);
        return text.ToString();
    }

    private static void Add(StringBuilder text, string name, params ReadOnlySpan<double> numbers)
    {
        text.Append(name);
        foreach (double number in numbers) text.Append(' ').Append(number.ToString("R", CultureInfo.InvariantCulture));
        text.Append(';');
    }
}
