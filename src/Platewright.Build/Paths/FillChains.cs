using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Geometry;

namespace Platewright.Build.Paths;

/// <summary>
/// Joins the lines of a filling into back-and-forth paths: a line goes on in the next row with a line that overlaps it. The
/// joints lay down nothing, so the material is that of the lines alone.
/// </summary>
internal static class FillChains
{
    /// <param name="paths">Where the paths are added.</param>
    /// <param name="kind">What they are for.</param>
    /// <param name="rows">The lines.</param>
    /// <param name="along">Unit direction of the rows.</param>
    /// <param name="beadAreaMm2">Cross-section of the bead, mm².</param>
    /// <param name="shortestMm">Shorter lines are left out, mm.</param>
    public static void Add(
        List<Path> paths, PathKind kind, Rows rows, Vec2 along, double beadAreaMm2, double shortestMm)
    {
        List<Chain> open = [], next = [];
        for (int row = rows.First; row < rows.End; row++)
        {
            ReadOnlySpan<double> ends = rows[row];
            if (ends.IsEmpty) continue;
            double y = rows.YOf(row);
            int from = 0;
            for (int i = 0; i < ends.Length; i += 2)
            {
                double low = ends[i], high = ends[i + 1];
                if (high - low < shortestMm) continue;
                while (from < open.Count && open[from].High < low) from++;
                Chain chain;
                if (from < open.Count && open[from].Low <= high)
                {
                    chain = open[from++];
                }
                else
                {
                    chain = new Chain();
                    paths.Add(new Path(kind, [], Closed: false, beadAreaMm2, Dashed: true));
                    chain.Place = paths.Count - 1;
                }
                chain.Add(row, low, high, y, along);
                next.Add(chain);
            }
            foreach (Chain chain in open) if (chain.Row != row) Close(paths, chain);
            (open, next) = (next, open);
            next.Clear();
        }
        foreach (Chain chain in open) Close(paths, chain);
    }

    private static void Close(List<Path> paths, Chain chain) =>
        paths[chain.Place] = paths[chain.Place] with { Points = [.. chain.Points] };

    private sealed class Chain
    {
        public int Place, Row;
        public double Low, High;
        private bool _back;

        public List<Vec2> Points { get; } = [];

        public void Add(int row, double low, double high, double y, Vec2 along)
        {
            (Row, Low, High) = (row, low, high);
            Vec2 a = Point(_back ? high : low, y, along), b = Point(_back ? low : high, y, along);
            _back = !_back;
            Points.Add(a);
            Points.Add(b);
        }

        private static Vec2 Point(double x, double y, Vec2 u) => new(x * u.X - y * u.Y, x * u.Y + y * u.X);
    }
}
