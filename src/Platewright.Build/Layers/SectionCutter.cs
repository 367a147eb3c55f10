using Platewright.Geometry;

namespace Platewright.Build.Layers;

/// <summary>Makes sections from cuts: united where shells overlap, oriented, measured. One for each thread.</summary>
internal sealed class SectionCutter(SectionSweep sweep, double pitchMm)
{
    /// <summary>Points nearer than this to the line through their neighbours say nothing about a region, in
    /// rows.</summary>
    private const double OutlineTolerance = 0.05;

    private readonly int[] _visit = new int[sweep.TriangleCount];
    private readonly RowScan _scan = new();

    public Section Cut(int layer)
    {
        List<Vec2[]> raw = sweep.Cut(layer, _visit, out int gaps);
        double area = raw.Sum(l => Outline.SignedArea(l));
        double outline = raw.Sum(l => Outline.Perimeter(l));
        List<Vec2[]> loops = Simplify(raw);
        Rows solid = _scan.Scan(loops, pitchMm);
        bool turnedInside = _scan.LeastWinding < 0 && _scan.GreatestWinding <= 0;
        bool overlapping = _scan.GreatestWinding - _scan.LeastWinding > 1;
        if (overlapping)
        {
            loops = Simplify(RowTrace.Trace(solid));
            area = solid.AreaMm2;
            outline = loops.Sum(l => Outline.Perimeter(l));
        }
        else if (turnedInside)
        {
            foreach (Vec2[] loop in loops) Array.Reverse(loop);
        }
        return new Section(loops, solid, Math.Abs(area), outline, overlapping, gaps);
    }

    private List<Vec2[]> Simplify(List<Vec2[]> raw)
    {
        List<Vec2[]> loops = new(raw.Count);
        foreach (Vec2[] loop in raw)
        {
            Vec2[] simple = LoopSimplifier.Simplify(loop, OutlineTolerance * pitchMm);
            if (simple.Length > 2) loops.Add(simple);
        }
        return loops;
    }
}
