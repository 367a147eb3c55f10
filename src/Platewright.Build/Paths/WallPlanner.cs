using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Geometry;

namespace Platewright.Build.Paths;

/// <summary>
/// Walls of a section: closed beads half a pitch, one and a half, … inside its outline. Where less than a bead's pitch
/// is left between two of them, or the part itself is thinner, one bead as wide as the gap runs along its middle. Not
/// for use by several threads at once.
/// </summary>
internal sealed class WallPlanner(double pitchMm, int walls)
{
    /// <summary>Paths keep within this of the true line, in pitches: 0.02 mm for usual beads, less than machines follow
    /// a line.</summary>
    public const double PathTolerance = 0.05;

    /// <summary>A traced outline may be off by this, in pitches; regions set against each other allow for it.</summary>
    private const double TraceTolerance = 0.0075;

    /// <summary>A gap must be this much wider than a wall's edge is exact, in pitches.</summary>
    private const double GapAllowance = 0.1;

    /// <summary>Gaps smaller than this, in squared pitches, are the rounding of corners.</summary>
    private const double LeastGapArea = 0.5;

    /// <summary>Where the mean thickness of what walls leave is less than this, in pitches, they take it: no line
    /// fits.</summary>
    private const double LeastInside = 0.25;

    /// <summary>Beads are at most this many pitches wide.</summary>
    private const double GreatestWidth = 1.5;

    private readonly RowOffset _offset = new();

    /// <summary>The walls, and what is left inside them.</summary>
    public Walled Plan(Section section, double layerHeightMm)
    {
        List<Path> paths = [];
        List<Vec2[]> rings = [];
        Rows region = section.Solid;
        IReadOnlyList<Vec2[]> loops = section.Loops;
        double gapArea = 0, length = 0;
        for (int i = 0; i < walls && !region.IsEmpty; i++)
        {
            Rows centre = _offset.Shrink(region, loops, i == 0 ? pitchMm / 2 : pitchMm);
            List<Vec2[]> traced = RowTrace.Trace(centre);
            List<Vec2[]> centreLoops = Keep(traced);
            gapArea += FillGaps(paths, i, region, loops, centre, centreLoops, layerHeightMm);
            foreach (Vec2[] loop in traced)
            {
                Vec2[] path = LoopSimplifier.Simplify(loop, PathTolerance * pitchMm);
                if (path.Length < 3) continue;
                length += Outline.Perimeter(path);
                rings.Add(path);
            }
            (region, loops) = (centre, centreLoops);
        }
        Rows inside = region;
        IReadOnlyList<Vec2[]> insideLoops = loops;
        if (walls > 0 && !region.IsEmpty)
        {
            inside = _offset.Shrink(region, loops, pitchMm / 2);
            insideLoops = Keep(RowTrace.Trace(inside));
        }
        double insideArea = walls == 0 ? section.AreaMm2 : insideLoops.Sum(l => Outline.SignedArea(l));
        if (walls > 0 && 2 * insideArea < LeastInside * pitchMm * insideLoops.Sum(l => Outline.Perimeter(l)))
            (inside, insideLoops, insideArea) = (Rows.Empty(inside.PitchMm), [], 0);
        // The beads together fill what lies between outline and inside: where walls overlap they are narrower.
        double width = length > 0 ? (section.AreaMm2 - insideArea - gapArea) / length : 0;
        double beadArea = Math.Clamp(width, 0, GreatestWidth * pitchMm) * layerHeightMm;
        foreach (Vec2[] ring in rings) paths.Add(new Path(PathKind.Wall, ring, Closed: true, beadArea));
        return new Walled(paths, inside, insideLoops, insideArea);
    }

    private double FillGaps(
        List<Path> paths, int wall, Rows outer, IReadOnlyList<Vec2[]> outerLoops, Rows centre, List<Vec2[]> centreLoops,
        double layerHeightMm)
    {
        double reach = (wall == 0 ? pitchMm / 2 : pitchMm) + GapAllowance * pitchMm;
        Rows left = centre.IsEmpty ? outer : RowSets.Subtract(outer, _offset.Grow(centre, centreLoops, reach));
        if (left.AreaMm2 < LeastGapArea * pitchMm * pitchMm) return 0;
        if (wall > 0)
        {
            // The outer wall's own half lies in it too: judge what is inside that wall.
            Rows inside = _offset.Shrink(outer, outerLoops, pitchMm / 2);
            left = centre.IsEmpty
                ? inside
                : RowSets.Subtract(inside, _offset.Grow(centre, centreLoops, pitchMm / 2 + GapAllowance * pitchMm));
        }
        return GapBeads.Add(paths, left, pitchMm, layerHeightMm, LeastGapArea);
    }

    private List<Vec2[]> Keep(List<Vec2[]> traced)
    {
        List<Vec2[]> loops = new(traced.Count);
        foreach (Vec2[] loop in traced)
        {
            Vec2[] simple = LoopSimplifier.Simplify(loop, TraceTolerance * pitchMm);
            if (simple.Length > 2) loops.Add(simple);
        }
        return loops;
    }
}

/// <summary>A section with its walls.</summary>
/// <param name="Inside">What lies within the innermost wall.</param>
/// <param name="InsideLoops">Its outlines, material to the left.</param>
internal sealed record Walled(List<Path> Paths, Rows Inside, IReadOnlyList<Vec2[]> InsideLoops, double InsideAreaMm2);
