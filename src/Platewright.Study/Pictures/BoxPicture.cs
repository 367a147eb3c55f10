using Platewright.Geometry;

namespace Platewright.Study.Pictures;

/// <summary>A box in dashes: front edges strong, hidden ones faint.</summary>
internal static class BoxPicture
{
    private const double LineGrey = 0.5;
    private const double DashPixels = 6;
    private const double StrokePixels = 1.7;

    public static Canvas Draw(Vec3 size, int edge)
    {
        var corners = new Vec3[8];
        for (int i = 0; i < 8; i++) corners[i] = new(Side(i, 1) * size.X, Side(i, 2) * size.Y, Side(i, 4) * size.Z);
        Viewpoint view = Viewpoint.Onto(corners, edge);
        var canvas = new Canvas(edge);
        int hidden = Farthest(view, corners);
        foreach (int axis in (int[])[1, 2, 4])
        {
            for (int i = 0; i < 8; i++)
            {
                if ((i & axis) != 0) continue;
                double opacity = i == hidden || (i | axis) == hidden ? 0.35 : 1;
                Dash(canvas, view.Project(corners[i]), view.Project(corners[i | axis]), opacity);
            }
        }
        return canvas;
    }

    private static int Side(int corner, int axis) => (corner & axis) == 0 ? 0 : 1;

    private static int Farthest(Viewpoint view, Vec3[] corners)
    {
        int farthest = 0;
        for (int i = 1; i < corners.Length; i++)
        {
            if (view.Project(corners[i]).Z < view.Project(corners[farthest]).Z) farthest = i;
        }
        return farthest;
    }

    /// <summary>A dashed line that begins and ends with a dash, so that corners are closed.</summary>
    private static void Dash(Canvas canvas, Vec3 from, Vec3 to, double opacity)
    {
        double dx = to.X - from.X, dy = to.Y - from.Y;
        double length = Math.Sqrt(dx * dx + dy * dy);
        if (!(length > 0)) return;
        int pieces = 2 * (int)Math.Max(1, Math.Round(length / (2 * DashPixels))) + 1;
        (int fromX, int toX) = ((int)(Math.Min(from.X, to.X) - 2), (int)(Math.Max(from.X, to.X) + 2));
        (int fromY, int toY) = ((int)(Math.Min(from.Y, to.Y) - 2), (int)(Math.Max(from.Y, to.Y) + 2));
        for (int y = fromY; y <= toY; y++)
        {
            for (int x = fromX; x <= toX; x++)
            {
                double px = x + 0.5 - from.X, py = y + 0.5 - from.Y;
                double along = (px * dx + py * dy) / length, across = Math.Abs(px * dy - py * dx) / length;
                if (along < -0.5 || along > length + 0.5) continue;
                int piece = (int)Math.Floor(Math.Clamp(along / length, 0, 0.999) * pieces);
                double coverage = Math.Clamp(StrokePixels / 2 + 0.5 - across, 0, 1);
                if (piece % 2 == 0 && coverage > 0) canvas.Lay(x, y, LineGrey, coverage * opacity);
            }
        }
    }
}
