using System.CommandLine;

namespace Platewright.Cli;

/// <summary>The options that several commands share, each with one name and one meaning.</summary>
internal static class Options
{
    public static Argument<string[]> Models() => new("MODEL")
    {
        Arity = ArgumentArity.OneOrMore,
        Description = "A model file (.stl .obj .ply .3mf .amf, or a .zip of those) or a folder of such files.",
    };

    public static Option<bool> Json() => new("--json")
    {
        Description = "Write one JSON document to standard output and nothing else there.",
    };

    public static Option<string?> Store() => new("--store")
    {
        HelpName = "DIR",
        Description = "Folder of the store of finished results (default: in your data folder).",
    };

    public static Option<string?> Unit() => new("--unit")
    {
        HelpName = "UNIT",
        Description = "Take the models' numbers in this unit (um, mm, cm, m, in, ft) whatever the files say.",
    };

    public static Option<string[]> Machines() => new("--machine")
    {
        HelpName = "M",
        Description = "A machine file (.toml) or a bundled generic machine; may be given more than once.",
    };

    public static Option<string[]> Boxes() => new("--box")
    {
        HelpName = "X,Y,Z",
        Description = "A box of this size, mm, in place of a machine; may be given more than once.",
    };

    public static Option<string[]> Cylinders() => new("--cylinder")
    {
        HelpName = "D,H",
        Description = "A round build volume of this diameter and height, mm; may be given more than once.",
    };
}
