using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Paths;

/// <summary>A part in a pose with all that its layers need of each other: what a layer's paths are planned
/// from.</summary>
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

    /// <summary>
    /// For each layer the first whose paths are equal but for their height above the build surface: itself, or one
    /// below.
    /// </summary>
    public int[] FirstEqual(CancellationToken cancel)
    {
        int count = Part.Layers.Length;
        // Most layers differ from all others in what can be counted: those need no key.
        var counts = new Counts[count];
        Dictionary<Counts, int> often = [];
        for (int l = 0; l < count; l++)
        {
            counts[l] = CountsOf(l);
            often[counts[l]] = often.GetValueOrDefault(counts[l]) + 1;
        }
        var keys = new string?[count];
        ParallelOptions options = new() { CancellationToken = cancel };
        Parallel.For(0, count, options, l => keys[l] = often[counts[l]] > 1 ? KeyOf(l) : null);
        Dictionary<string, int> first = new(StringComparer.Ordinal);
        var equal = new int[count];
        for (int l = 0; l < count; l++)
            equal[l] = keys[l] is not { } key || first.TryAdd(key, l) ? l : first[key];
        return equal;
    }

    private Counts CountsOf(int layer)
    {
        IReadOnlyList<Vec2[]> loops = Part.Sections[layer].Loops;
        int runs = Directions.Sparse(layer).Sum(d => Cores.Core(layer, d).RunCount);
        int support = Support.IsEmpty ? 0 : Support[layer].RunCount;
        return new Counts(IsOwn(layer) ? layer : -1, loops.Count, loops.Sum(l => l.Length), runs, support);
    }

    private readonly record struct Counts(int Own, int Loops, int Points, int Runs, int Support);

    // The gyroid differs at every height; brim and speed of the first layer are its alone.
    private bool IsOwn(int layer) => layer == 0 || Recipe.InfillPattern == InfillPattern.Gyroid;

    private string KeyOf(int layer)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        List<long> numbers = [IsOwn(layer) ? layer : -1, Directions.Solid(layer), Step(Part.Layers[layer].HeightMm)];
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
