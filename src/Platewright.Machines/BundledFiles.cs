using System.Collections.Immutable;
using System.Reflection;

namespace Platewright.Machines;

/// <summary>The descriptions that come with the program, as resources of this assembly.</summary>
internal static class BundledFiles
{
    /// <summary>Reads all files of one folder.</summary>
    /// <param name="folder">As <c>Bundled</c> or <c>BundledRecipes</c>.</param>
    /// <param name="parse">Takes the text and the name of the file.</param>
    public static ImmutableArray<T> Read<T>(string folder, Func<string, string, T> parse)
    {
        Assembly here = typeof(BundledFiles).Assembly;
        string prefix = $"Platewright.Machines.{folder}.";
        return [.. here.GetManifestResourceNames()
            .Where(n => n.StartsWith(prefix, StringComparison.Ordinal))
            .Select(n => parse(TextOf(here, n), n[prefix.Length..]))];
    }

    /// <summary>The text of one file; null where there is none of that name.</summary>
    public static string? Text(string folder, string name)
    {
        Assembly here = typeof(BundledFiles).Assembly;
        string resource = $"Platewright.Machines.{folder}.{name}";
        return here.GetManifestResourceNames().Contains(resource, StringComparer.Ordinal) ? TextOf(here, resource) : null;
    }

    private static string TextOf(Assembly assembly, string resource)
    {
        using StreamReader reader = new(assembly.GetManifestResourceStream(resource)!);
        return reader.ReadToEnd();
    }
}
