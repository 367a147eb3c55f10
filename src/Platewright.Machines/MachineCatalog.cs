using System.Collections.Immutable;
using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>Finds machines: the bundled generic ones by id or name, the user's own by their files.</summary>
public static class MachineCatalog
{
    private const string Extension = ".toml";

    /// <summary>
    /// The bundled generic machines, smallest edge first. Each stands for a class of machines and copies none.
    /// </summary>
    public static ImmutableArray<Machine> Bundled { get; } =
    [
        .. BundledFiles.Read("Bundled", MachineFile.Parse)
            .Select(m => m with { Generic = true })
            .OrderBy(Edge)
            .ThenBy(m => m.Id, StringComparer.Ordinal),
    ];

    /// <summary>A bundled machine by id or name, case aside, or the machine of a TOML file.</summary>
    /// <exception cref="DescriptionException">There is no such machine, or its file is not right.</exception>
    public static Machine Find(string nameOrPath)
    {
        if (FindBundled(nameOrPath) is { } bundled) return bundled;
        if (LooksLikePath(nameOrPath) || File.Exists(nameOrPath)) return MachineFile.Read(nameOrPath);
        throw new DescriptionException(new DescriptionError(UnknownSentence(nameOrPath)));
    }

    /// <summary>A bundled machine by id or name, case aside; null where there is none.</summary>
    public static Machine? FindBundled(string name) => Bundled.FirstOrDefault(m =>
        string.Equals(m.Id, name, StringComparison.OrdinalIgnoreCase)
        || string.Equals(m.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>True for what can only be a file: it ends in .toml or has a slash.</summary>
    public static bool LooksLikePath(string nameOrPath) =>
        nameOrPath.EndsWith(Extension, StringComparison.OrdinalIgnoreCase)
        || nameOrPath.AsSpan().ContainsAny('/', '\\');

    /// <summary>What to tell who named a machine that is not bundled.</summary>
    public static string UnknownSentence(string name)
    {
        string[] ids = [.. Bundled.Select(m => m.Id)];
        return $"no bundled machine is called \"{name}\".{Suggestion.Sentence(name, ids)} "
            + $"Name a machine file that ends in .toml, or one of: {string.Join(", ", ids)}.";
    }

    private static double Edge(Machine machine) => machine.BuildVolume switch
    {
        BoxVolume box => Math.Min(box.WidthMm, box.DepthMm),
        CylinderVolume round => round.DiameterMm,
        PrismVolume prism => FreeSpace.BoundsOf(prism).Size.X,
        _ => 0,
    };
}
