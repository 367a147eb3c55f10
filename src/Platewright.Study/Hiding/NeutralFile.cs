using System.Text.RegularExpressions;
using Platewright.Formats;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Study.Examining;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Hiding;

/// <summary>One examined file, or pack of files, with neutral names for itself, the files in it and the objects in those.</summary>
/// <param name="Path">Where it really lies, shown as "file 7.stl".</param>
internal sealed partial record NeutralFile(ModelPath Path, Examination Found, IReadOnlyDictionary<string, string> Objects)
{
    /// <param name="number">Of the file in its study, from 1.</param>
    /// <param name="path">Where it lies and what it was called.</param>
    /// <param name="found">What is in it.</param>
    /// <param name="ownMaterials">Materials of the study file: these and the bundled ones keep their names.</param>
    public static NeutralFile Of(int number, ModelPath path, Examination found, IReadOnlyList<Material> ownMaterials)
    {
        string shown = $"file {number}{Extension(path.Path)}";
        Dictionary<string, string> files = new(StringComparer.Ordinal) { [path.ShownAs] = shown };
        int inside = 0;
        foreach (string file in found.Parts.Select(p => p.File).Concat(found.Unusable.Select(u => u.File)))
            if (!files.ContainsKey(file)) files.Add(file, $"{shown}/item {++inside}{Extension(file)}");
        Dictionary<string, string> objects = new(StringComparer.Ordinal);
        foreach (string name in found.Parts.Select(p => p.Object).OfType<string>()) objects.TryAdd(name, $"object {objects.Count + 1}");
        (string, string)[] names =
        [
            (path.Path, shown), .. files.Select(f => (f.Key, f.Value)), .. files.Select(f => (System.IO.Path.GetFileName(f.Key), f.Value)),
            .. objects.Select(o => (o.Key, o.Value)),
        ];
        Examination neutral = new(
            [.. found.Parts.Select(p => Named(p, files, objects, names, ownMaterials))],
            [.. found.Unusable.Select(u => new UnusableFile(files[u.File], null, NeutralText.Of(u.Message, [.. names, .. PlaceIn(u)])))]);
        return new NeutralFile(new ModelPath(path.Path, shown), neutral, objects);
    }

    /// <summary>What stands for the name of an object, which need not be there.</summary>
    public string ObjectNamed(string name) => Objects.GetValueOrDefault(name, "the one asked for");

    private static ExaminedPart Named(
        ExaminedPart part, Dictionary<string, string> files, Dictionary<string, string> objects, (string, string)[] names,
        IReadOnlyList<Material> ownMaterials) => part with
        {
            File = files[part.File],
            Object = part.Object is { } inside ? objects[inside] : null,
            // A file may call its material anything; what no catalogue knows may be a customer.
            Material = part.Material is { } material && MaterialCatalog.Find(material, ownMaterials) is { } known ? known.Name : null,
            MadeBy = null,
            Licence = null,
            Findings = [.. part.Findings.Select(f => new Finding(f.Code, f.Count, NeutralText.Of(f.Message, names)))],
        };

    // A place is a line or byte, or the name of an object or of an entry of a package.
    private static IEnumerable<(string, string)> PlaceIn(UnusableFile unusable) =>
        unusable.Place is { } place && !Counted().IsMatch(place) ? [(place, "inside")] : [];

    [GeneratedRegex(@"^(?:line|byte|element|triangle|object) \d+$", RegexOptions.None, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Counted();

    private static string Extension(string path) => System.IO.Path.GetExtension(path).ToLowerInvariant();
}
