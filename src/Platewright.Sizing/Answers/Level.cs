using System.Collections.Immutable;
using Platewright.Fit;
using Platewright.Sizing.Cases;

namespace Platewright.Sizing.Answers;

/// <summary>What it takes to cover a share of the projects.</summary>
/// <param name="Projects">How many that is, 1 or more.</param>
/// <param name="Listed">The smallest machine that can make so many; null where none does.</param>
/// <param name="CubeMm">Edge of the smallest cube that holds so many, accepted compromises included; null where none does.</param>
/// <param name="Box">Of all boxes with a square bed that hold so many, the one of least volume.</param>
/// <param name="Curve">Beds and heights that hold so many at full size, tilted where that is accepted.</param>
/// <param name="DecidedBy">The part that decides the cube; null where no cube does.</param>
/// <param name="MissesByMm">By how much the cube of the level before is too small for it; null at the first level.</param>
public sealed record Level(
    double Share, int Projects, int? Listed, double? CubeMm, BedAndHeight? Box, ImmutableArray<BedAndHeight> Curve, string? DecidedBy,
    double? MissesByMm)
{
    private static readonly double[] Shares = [0.5, 0.75, 0.9, 1];

    /// <summary>A curve of more beds than this shows nothing more.</summary>
    private const int MostBeds = 300;

    public static ImmutableArray<Level> Of(SizingCase c)
    {
        if (c.Sized.IsEmpty) return [];
        var cubes = c.Sized.Select(p => (Project: p, Edge: ImaginedMachine.OfAnyKind.EdgesFor(p).WithCompromiseMm)).OrderBy(p => p.Edge).ToArray();
        ImmutableArray<BedAndHeight>[] curves = [.. c.Sized.Select(p => ProjectNeed.Of(p)?.TiltedCurve ?? [])];
        double[] beds = Beds(curves);
        double[][] heights = [.. beds.Select(bed => (double[])[.. curves.Select(curve => BedHeightCurve.HeightAt(curve, bed)).Order()])];
        ImmutableArray<Level>.Builder levels = ImmutableArray.CreateBuilder<Level>(Shares.Length);
        double before = 0;
        foreach (double share in Shares)
        {
            int count = Math.Max(1, (int)Math.Ceiling(share * c.Sized.Length - Rounding));
            (SizedProject project, double edge) = cubes[count - 1];
            ImmutableArray<BedAndHeight> curve = BedHeightCurve.Best(
                beds.Select((bed, i) => new BedAndHeight(bed, heights[i][count - 1])).Where(p => double.IsFinite(p.HeightMm)));
            bool any = double.IsFinite(edge);
            levels.Add(new Level(
                share, count, Smallest(c, count), any ? edge : null,
                curve.IsEmpty ? null : curve.MinBy(p => p.BedMm * p.BedMm * p.HeightMm),
                curve, any ? Deciding(project) : null, any && levels.Count > 0 ? edge - before : null));
            before = edge;
        }
        return levels.MoveToImmutable();
    }

    /// <summary>Of a share of whole projects.</summary>
    private const double Rounding = 1e-9;

    private static int? Smallest(SizingCase c, int count)
    {
        int[] enough = [.. Enumerable.Range(0, c.Machines.Length).Where(m => c.Projects.Count(p => p.CanMake[m]) >= count)];
        return enough.Length == 0 ? null : enough.MinBy(m => c.Machines[m].EdgeMm);
    }

    private static double[] Beds(ImmutableArray<BedAndHeight>[] curves)
    {
        double[] all = [.. curves.SelectMany(curve => curve.Select(p => p.BedMm)).Distinct().Order()];
        return all.Length <= MostBeds
            ? all
            : [.. Enumerable.Range(0, MostBeds).Select(i => all[(int)((long)i * (all.Length - 1) / (MostBeds - 1))])];
    }

    /// <summary>The part that needs the largest cube, of alternatives the one that needs the smallest.</summary>
    private static string Deciding(SizedProject project) => project.Groups
        .Select(g => g.MinBy(p => p.Need.CubeAcceptedMm)!)
        .MaxBy(p => p.Need.CubeAcceptedMm)!.Id;
}
