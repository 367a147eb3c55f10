using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Paths;

/// <summary>A part in a pose with all that its layers need of each other: what a layer's paths are planned from.</summary>
internal sealed record BuildLayers
{
    /// <summary>Coordinates that agree to this are equal, mm.</summary>
    private const double SameMm = 1e-5;

    public required LayeredPart Part { get; init; }

    public required Recipe Recipe { get; init; }

    public required FillDirections Directions { get; init; }

    public required SolidCores Cores { get; init; }

    /// <summary>Support in each layer; empty where none is wanted.</summary>
    public required ImmutableArray<Rows> Support { get; init; }

    public required double BrimMm { get; init; }

    public required double PitchMm { get; init; }

    public static BuildLayers Of(
        Mesh welded, MeshTopology topology, Matrix3 linear, Recipe recipe, double brimMm, CancellationToken cancel)
    {
        double pitch = Bead.TouchingPitchMm(recipe.BeadWidthMm, recipe.LayerHeightMm);
        FillDirections directions = new(recipe.InfillPattern);
        LayeredPart part = LayeredPart.Cut(
            welded, topology, linear, recipe.LayerHeightMm, recipe.BeadWidthMm / RowsPerBead, cancel);
        return new BuildLayers
        {
            Part = part,
            Recipe = recipe,
            Directions = directions,
            Cores = SolidCores.Of(part.Sections, directions.Unit, pitch, recipe.SolidLayers, cancel),
            Support = recipe.Support ? SupportRegions.Of(part, recipe, pitch, cancel) : [],
            BrimMm = brimMm,
            PitchMm = pitch,
        };
    }

    private const int RowsPerBead = 8;

    /// <summary>Equal for layers whose paths are equal but for their height above the build surface.</summary>
    public string KeyOf(int layer)
    {
        // The gyroid differs at every height, and the brim is the first layer's alone.
        bool own = Recipe.InfillPattern == InfillPattern.Gyroid || (layer == 0 && BrimMm > 0);
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        List<long> numbers = [own ? layer : -1, Directions.Solid(layer), Step(Part.Layers[layer].HeightMm)];
        foreach (Vec2[] loop in Part.Sections[layer].Loops)
        {
            numbers.Add(loop.Length);
            foreach (Vec2 p in loop)
            {
                numbers.Add(Step(p.X));
                numbers.Add(Step(p.Y));
            }
        }
        foreach (int d in Directions.Sparse(layer)) Add(numbers, Cores.Core(layer, d));
        if (!Support.IsEmpty) Add(numbers, Support[layer]);
        hash.AppendData(MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(numbers)));
        return Convert.ToHexString(hash.GetHashAndReset());
    }

    private static void Add(List<long> numbers, Rows rows)
    {
        numbers.Add(rows.First);
        numbers.Add(rows.Count);
        foreach (int start in rows.Starts) numbers.Add(start);
        foreach (double end in rows.Ends) numbers.Add(Step(end));
    }

    private static long Step(double mm) => (long)Math.Round(mm / SameMm);
}
