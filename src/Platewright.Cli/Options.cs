using System.CommandLine;
using System.CommandLine.Parsing;

namespace Platewright.Cli;

/// <summary>The options that several commands share, each with one name and one meaning.</summary>
internal static class Options
{
    public static Argument<string[]> Models()
    {
        Argument<string[]> models = new("MODEL")
        {
            Arity = ArgumentArity.OneOrMore,
            Description = "A model file (.stl .obj .ply .3mf .amf, or a .zip of those) or a folder of such files.",
        };
        models.Validators.Add(RefuseOptions);
        return models;
    }

    /// <summary>What looks like an option is one that is not known, never a file.</summary>
    public static void RefuseOptions(ArgumentResult result)
    {
        foreach (string token in result.Tokens.Select(t => t.Value).Where(t => t.Length > 1 && t[0] == '-'))
            result.AddError($"There is no option {token}. (A file of that name is ./{token}.)");
    }

    public static Option<bool> Json() => new("--json")
    {
        Description = "Write one JSON document to standard output and nothing else there.",
    };

    public static Option<string?> Store() => new("--store")
    {
        HelpName = "DIR",
        Description = "Folder of the store of finished results (default: in your data folder).",
    };

    public static Option<double?> Number(string name, string unit, string description) => new(name)
    {
        HelpName = unit,
        Description = description,
    };
}
