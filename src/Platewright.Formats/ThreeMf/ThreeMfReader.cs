using Platewright.Formats.Packs;
using Platewright.Formats.Reading;

namespace Platewright.Formats.ThreeMf;

/// <summary>3MF: a part for each item of the build, whatever its type, in place and in mm.</summary>
internal static class ThreeMfReader
{
    public static ModelFile Read(ReadOnlyMemory<byte> bytes, ReadRequest request, UnpackBudget budget)
    {
        if (!ZipPack.IsZip(bytes.Span))
            throw request.Refuse("byte 0", "it is not a zip package, so it is not a 3MF file");
        using ZipPack pack = ZipPack.Open(bytes, request, budget);
        var package = new ThreeMfPackage(pack, request);
        ThreeMfModel root = package.Root();
        if (root.Build is not { Count: > 0 } items)
            throw request.Refuse(
                root.Part, "the build is empty, so nothing is to be made", "put parts on the plate, then export again");

        (LengthUnit unit, UnitSource source) = request.UnitOr(root.Unit);
        var expansion = new BuildExpansion(package, request, root.Unit);
        CheckItems(items, expansion, request);
        var notes = new NoteList();
        var parts = new List<ModelPart>();
        var names = new NameList();
        foreach (Placement item in items)
        {
            ThreeMfObject placed = expansion.ObjectOf(item);
            string name = names.Unique(placed.Name ?? $"object {placed.Id}");
            if (placed.Beams > 0)
                notes.Add("beams_left_out", $"“{name}” has {placed.Beams} beams of a lattice, which are not read.");
            if (placed.IsLowResolution)
                notes.Add("stand_in_mesh", $"“{name}” is drawn in slices; its mesh is a coarse stand-in for them.");
            if (expansion.CountTriangles(item) == 0)
            {
                notes.Add("part_left_out", $"“{name}” has no triangles and is left out.");
                continue;
            }
            parts.Add(Part(item, placed.Type, items.Count == 1 ? null : name, unit, expansion, notes));
        }
        if (parts.Count == 0)
            throw request.Refuse(root.Part, "it holds beams only and no triangles", "export it as a mesh");
        return new ModelFile
        {
            File = request.File,
            Format = ModelFormat.ThreeMf,
            Unit = unit,
            UnitSource = source,
            Parts = parts,
            Origin = Origin(root),
            Notes = notes.Notes,
        };
    }

    private static void CheckItems(List<Placement> items, BuildExpansion expansion, ReadRequest request)
    {
        long triangles = 0;
        foreach (Placement item in items)
        {
            triangles += expansion.CountTriangles(item);
            request.CheckTriangles(triangles, item.Place);
            if (expansion.ObjectOf(item).Type == ObjectType.Other)
                throw request.Refuse(item.Place, $"object {item.ObjectId} is of type “other”, which may not be built");
        }
    }

    private static ModelPart Part(
        Placement item, ObjectType type, string? name, LengthUnit unit, BuildExpansion expansion, NoteList notes)
    {
        Dictionary<Look, long> looks = expansion.Looks(item);
        Look look = looks.OrderByDescending(l => l.Value).ThenBy(l => l.Key.ToString(), StringComparer.Ordinal)
            .Select(l => l.Key).FirstOrDefault();
        if (looks.Count > 1)
        {
            string who = name is null ? "The part" : $"“{name}”";
            notes.Add(
                "several_looks", $"{who} has {looks.Count} materials or colours; it counts as that of most triangles.");
        }
        return new ModelPart
        {
            Name = name,
            Mesh = expansion.Build(item, unit.ToMillimetres()),
            Material = look.Material,
            Colour = look.Colour,
            Type = type,
        };
    }

    private static ModelOrigin Origin(ThreeMfModel root) => new(
        root.Metadata.GetValueOrDefault("Title"),
        root.Metadata.GetValueOrDefault("Designer"),
        root.Metadata.GetValueOrDefault("LicenseTerms"),
        root.Metadata.GetValueOrDefault("Copyright"));
}
