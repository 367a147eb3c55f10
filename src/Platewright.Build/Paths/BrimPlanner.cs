using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Geometry;

namespace Platewright.Build.Paths;

/// <summary>The brim: beads around the outer outlines of the first layer, half a pitch outside, one and a half,
/// ….</summary>
internal static class BrimPlanner
{
    public static void Add(List<Path> paths, Section first, double widthMm, double pitchMm, double layerHeightMm)
    {
        int beads = (int)Math.Round(widthMm / pitchMm);
        RowOffset offset = new();
        for (int i = 0; i < beads; i++)
        {
            Rows grown = offset.Grow(first.Solid, first.Loops, (i + 0.5) * pitchMm);
            foreach (Vec2[] loop in RowTrace.Trace(grown))
            {
                Vec2[] path = LoopSimplifier.Simplify(loop, WallPlanner.PathTolerance * pitchMm);
                if (path.Length > 2 && Outline.SignedArea(path) > 0)
                    paths.Add(new Path(PathKind.Brim, path, Closed: true, pitchMm * layerHeightMm));
            }
        }
    }
}
