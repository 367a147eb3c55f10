using System.CommandLine;
using Platewright.Formats;
using Platewright.Formats.Toml;
using Platewright.Study.Examining;

namespace Platewright.Cli.Commands;

/// <summary>How a command line wants models read: their unit, their bead, the limits.</summary>
internal sealed class ReadingChoice
{
    private const long Mebibyte = 1 << 20;

    private readonly Option<string?> _unit = new("--unit")
    {
        HelpName = "UNIT",
        Description = "Take the models' numbers in this unit (um, mm, cm, m, in, ft) whatever the files say.",
    };

    private readonly Option<bool> _separate = new("--separate")
    {
        Description = "Take the loose shells of a file for parts of their own, unless they interlock or lie inside each other.",
    };

    private readonly Option<double?> _bead = Options.Number("--bead", "MM", "Width of one bead, mm, to hold walls against (default 0.45).");

    private readonly Option<long?> _file = new("--limit-file")
    {
        HelpName = "MIB",
        Description = "Greatest size of a file, MiB (default 1024).",
    };

    private readonly Option<int?> _triangles = new("--limit-triangles")
    {
        HelpName = "N",
        Description = "Most triangles in one file (default 20 million).",
    };

    private readonly Option<long?> _unpacked = new("--limit-unpacked")
    {
        HelpName = "MIB",
        Description = "Greatest unpacked size of an archive, MiB (default 1024).",
    };

    private readonly Option<double?> _ratio = Options.Number(
        "--limit-ratio", "R", "Greatest ratio of unpacked to packed size in an archive (default 250).");

    private readonly Option<int?> _depth = new("--limit-depth")
    {
        HelpName = "N",
        Description = "How deep archives may lie in archives (default 3).",
    };

    public void AddTo(Command command)
    {
        foreach (Option option in new Option[] { _unit, _separate, _bead, _file, _triangles, _unpacked, _ratio, _depth })
            command.Options.Add(option);
    }

    /// <exception cref="DescriptionException">A unit that is none, or a number out of its range.</exception>
    public ExamineOptions Of(ParseResult parsed)
    {
        ReadLimits usual = ReadLimits.Default;
        ReadLimits limits = usual with
        {
            FileBytes = Above(_file, parsed.GetValue(_file)) * Mebibyte ?? usual.FileBytes,
            Triangles = (int?)Above(_triangles, parsed.GetValue(_triangles)) ?? usual.Triangles,
            UnpackedBytes = Above(_unpacked, parsed.GetValue(_unpacked)) * Mebibyte ?? usual.UnpackedBytes,
            CompressionRatio = Positive(_ratio, parsed.GetValue(_ratio)) ?? usual.CompressionRatio,
            ArchiveDepth = (int?)Above(_depth, parsed.GetValue(_depth)) ?? usual.ArchiveDepth,
        };
        double bead = Positive(_bead, parsed.GetValue(_bead)) ?? ExamineOptions.UsualBeadWidthMm;
        return new ExamineOptions(limits, Unit(parsed.GetValue(_unit)), bead, parsed.GetValue(_separate));
    }

    private static LengthUnit? Unit(string? name) => name is null
        ? null
        : LengthUnits.Named(name) ?? throw Refused("--unit", $"expected um, mm, cm, m, in or ft, found \"{name}\".");

    private static long? Above(Option option, long? value) =>
        value is <= 0 ? throw Refused(option.Name, $"expected a whole number above 0, found {value}.") : value;

    private static double? Positive(Option option, double? value) =>
        value is null || (value > 0 && double.IsFinite(value.Value))
            ? value
            : throw Refused(option.Name, $"expected a number above 0, found {value}.");

    private static DescriptionException Refused(string option, string message) => new(new DescriptionError(message, Key: option));
}
