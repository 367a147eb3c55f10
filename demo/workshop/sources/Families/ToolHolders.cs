using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>Holders for the tool wall; mm.</summary>
internal static class ToolHolders
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("tool-wall/screwdriver-rack.stl", Rack(places: 6, pitch: 27)),
        () => new("tool-wall/drill-block.stl", FileKind.StlText, DrillBlock(smallest: 1.5, largest: 10, step: 0.5)),
    ];

    /// <summary>A shelf with a row of waisted holes, a back to screw on and ribs beneath.</summary>
    private static Solid Rack(int places, double pitch)
    {
        double length = places * pitch + 6, depth = 34, height = 46, thick = 5;
        Region angle = Outline.Of(new(0, 0), new(thick, 0), new(thick, height - thick), new(depth, height - thick),
            new(depth, height), new(0, height)).Rounded(1.4, 3);
        Region rib = angle.Plus(Outline.Of(new(2, 4), new(thick, 4), new(depth - 6, height - thick),
            new(depth - 6, height - 2), new(2, height - 2)));
        Solid rack = Layers.Of(0, [new(rib, 4), new(angle, length - 4), new(rib, length)], 0.7, 0.7)
            .Moved(new Matrix3(Vec3.UnitZ, -Vec3.UnitX, Vec3.UnitY));
        rack.Pierced(Outline.Circle(7.5).Row(places, pitch), new Vec3(length / 2, -19.5, 99), Turns.Down, 0.6);
        foreach (double x in (ReadOnlySpan<double>)[length * 0.12, length * 0.5, length * 0.88])
            rack.Drilled(2.1, new Vec3(x, -99, 14), Vec3.UnitY, head: 4);
        return rack;
    }

    /// <summary>A block with a hole for every drill of a set, sloped in two steps.</summary>
    private static Solid DrillBlock(double smallest, double largest, double step)
    {
        int count = (int)Math.Round((largest - smallest) / step) + 1, rows = 3, inRow = (count + rows - 1) / rows;
        double width = inRow * 15 + 8, low = 18, rise = 12, run = 17;
        Slab[] steps = [.. Enumerable.Range(0, rows)
            .Select(i => new Slab(Outline.Rectangle(0, i * run, width, rows * run + 4, i == 0 ? 3 : 2),
                low + rise * i))];
        Solid block = Layers.Of(0, steps, 0.8, 0.8);
        for (int i = 0; i < count; i++)
        {
            int row = i / inRow;
            double radius = (largest - step * (count - 1 - i)) / 2 + 0.15;
            double y = row * run + (row == rows - 1 ? run + 4 : run) / 2;
            block.Bored(radius, low + rise * row - 4, new Vec3(11.5 + i % inRow * 15, y, 99), Turns.Down);
        }
        return block;
    }
}
