namespace Platewright.Study.Pictures;

/// <summary>A square picture in greys with opacity.</summary>
internal sealed class Canvas
{
    /// <summary>Samples along each side of a pixel; their mean smooths the outline.</summary>
    public const int SamplesPerPixel = 3;

    /// <summary>How much of a face's brightness its edges keep.</summary>
    private const double EdgeBrightness = 0.3;

    /// <summary>Few enough that a picture packs well, more than the eye tells apart on small faces.</summary>
    private const int Greys = 32;

    private readonly int _edge;
    private readonly byte[] _greyAndOpacity;

    public Canvas(int edge)
    {
        _edge = edge;
        _greyAndOpacity = new byte[edge * edge * 2];
    }

    /// <summary>The surfaces shaded by their direction, with dark edges.</summary>
    public static Canvas Of(SurfaceBuffer surface)
    {
        var canvas = new Canvas(surface.Samples / SamplesPerPixel);
        for (int y = 0; y < canvas._edge; y++)
        {
            for (int x = 0; x < canvas._edge; x++) canvas.Average(surface, x, y);
        }
        return canvas;
    }

    /// <summary>Lays a grey of this opacity (both 0 … 1) over a pixel; outside the picture nothing happens.</summary>
    public void Lay(int x, int y, double grey, double opacity)
    {
        if (x < 0 || y < 0 || x >= _edge || y >= _edge) return;
        int at = 2 * (y * _edge + x);
        double under = _greyAndOpacity[at] / 255.0, underOpacity = _greyAndOpacity[at + 1] / 255.0;
        double total = opacity + underOpacity * (1 - opacity);
        if (total <= 0) return;
        Set(at, (grey * opacity + under * underOpacity * (1 - opacity)) / total, total);
    }

    public byte[] ToPng() => PngWriter.GreyWithOpacity(_edge, _edge, _greyAndOpacity);

    private void Average(SurfaceBuffer surface, int x, int y)
    {
        double sum = 0;
        int covered = 0;
        for (int dy = 0; dy < SamplesPerPixel; dy++)
        {
            for (int dx = 0; dx < SamplesPerPixel; dx++)
            {
                int sx = x * SamplesPerPixel + dx, sy = y * SamplesPerPixel + dy;
                if (!surface.Covers(sx, sy)) continue;
                double shade = Math.Clamp(Viewpoint.Shade(surface.Normal(sx, sy)), 0.2, 0.9);
                sum += surface.IsEdge(sx, sy) ? shade * EdgeBrightness : shade;
                covered++;
            }
        }
        if (covered == 0) return;
        Set(2 * (y * _edge + x), sum / covered, (double)covered / (SamplesPerPixel * SamplesPerPixel));
    }

    private void Set(int at, double grey, double opacity)
    {
        _greyAndOpacity[at] = (byte)(Math.Round(Math.Clamp(grey, 0, 1) * (Greys - 1)) * 255 / (Greys - 1));
        _greyAndOpacity[at + 1] = (byte)Math.Clamp(opacity * 255 + 0.5, 0, 255);
    }
}
