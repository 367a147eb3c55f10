using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>Housings with screw posts, floor ribs and vents, and the lids that go on them; outer sizes in mm.</summary>
internal sealed record Enclosures(double Width, double Depth, double Height, double Wall = 2.4, double Radius = 6)
{
    private static readonly Enclosures Sensor = new(Width: 96, Depth: 72, Height: 34);
    private static readonly Enclosures Supply = new(Width: 188, Depth: 148, Height: 76, Wall: 2.8, Radius: 8);
    private static readonly Enclosures Winch = new(Width: 164, Depth: 128, Height: 46, Wall: 3.2, Radius: 8);

    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => new("shed-sensor/housing.3mf", FileKind.ThreeMf,
            Sensor.Housing(ventsLeft: 5, ventsRight: 5, cableRadius: 5), "ASA", "#D9D4C7"),
        () => Model.Stl("shed-sensor/lid.stl", Sensor.Lid()),
        () => new("bench-supply/housing.3mf", FileKind.ThreeMf,
            Supply.Housing(ventsLeft: 12, ventsRight: 12, cableRadius: 7), "ABS", "#3A4350"),
        () => Model.Stl("bench-supply/lid.stl", Supply.Lid()),
        () => Model.Stl("barrow-winch/gear-case.stl", Winch.Housing(ventsLeft: 0, ventsRight: 0, cableRadius: 6.5)),
        () => Model.Stl("barrow-winch/gear-case-lid.stl", Winch.Lid()),
    ];

    private const double PostRadius = 4.5;
    private const double PilotRadius = 1.3;
    private const double LipClearance = 0.25;

    public Solid Housing(int ventsLeft, int ventsRight, double cableRadius = 0)
    {
        Region outer = Outline.Centred(Width, Depth, Radius);
        Region inner = Outline.Centred(Width - 2 * Wall, Depth - 2 * Wall, Radius - Wall);
        foreach (Vec2 p in Posts())
            inner = inner.Minus(Outline.Circle(PostRadius, p.X, p.Y), Outline.Centred(
                2 * PostRadius, 2 * PostRadius, 0, p.X + Math.Sign(p.X) * PostRadius,
                    p.Y + Math.Sign(p.Y) * PostRadius),
                Outline.Centred(2 * PostRadius, 2 * PostRadius, 0, p.X + Math.Sign(p.X) * PostRadius, p.Y),
                Outline.Centred(2 * PostRadius, 2 * PostRadius, 0, p.X, p.Y + Math.Sign(p.Y) * PostRadius));
        Solid box = Prism.Of(outer, Frame.Level(0), Prism.Filleted(Height, Math.Min(3, Radius / 2), 0));
        box.Pocketed(inner.Rounded(0, 1), new Vec3(0, 0, Height + 9), Turns.Down, new Level(0),
            new Level(Height - Wall - 0.8), new Level(Height - Wall, 0.8));
        foreach (Vec2 p in Posts()) box.Bored(PilotRadius, Math.Min(12, Height * 0.6), new Vec3(p.X, p.Y, Height + 9),
            Turns.Down);
        AddFloor(box);
        AddVents(box, -1, ventsLeft);
        AddVents(box, 1, ventsRight);
        if (cableRadius > 0)
            box.Pierced(Outline.Circle(cableRadius), new Vec3(Width * 0.25, -Depth, Height * 0.55), Vec3.UnitY, 0.4);
        return box;
    }

    public Solid Lid(double thickness = 3, double lip = 4)
    {
        Solid lid = Prism.Of(Outline.Centred(Width, Depth, Radius), Frame.Level(0),
            Prism.Filleted(thickness, 0, Math.Min(1.6, thickness * 0.6)));
        Region outside = Outline.Centred(Width - 2 * (Wall + LipClearance), Depth - 2 * (Wall + LipClearance),
            Radius - Wall);
        foreach (Vec2 p in Posts())
        {
            Region corner = Outline.Centred(4 * PostRadius, 4 * PostRadius, 0, p.X + Math.Sign(p.X) * PostRadius,
                p.Y + Math.Sign(p.Y) * PostRadius);
            outside = outside.Minus(corner.Grown(LipClearance));
            lid.Drilled(1.7, new Vec3(p.X, p.Y, 99), Turns.Down, head: 3.2);
        }
        Region rim = outside.Minus(outside.Grown(-1.8));
        lid.Raised(rim, new Vec3(0, 0, -9), Turns.Up, new Level(0), new Level(lip - 0.5), new Level(lip, 0.5));
        return lid.Moved(Turns.Over);
    }

    /// <summary>Four pegs for a board and ribs between them.</summary>
    private void AddFloor(Solid box)
    {
        double x = Width / 2 - 17, y = Depth / 2 - 15;
        if (x < 10 || y < 8) return;
        foreach (Vec2 p in (ReadOnlySpan<Vec2>)[new(-x, -y), new(x, -y), new(x, y), new(-x, y)])
        {
            box.Raised(Outline.Circle(3.2), new Vec3(p.X, p.Y, Height - 1), Turns.Down, new Level(0, -0.8),
                new Level(0.8), new Level(6));
            box.Bored(1.1, 5, new Vec3(p.X, p.Y, Height - 1), Turns.Down);
        }
        Region ribs = Outline.Stroke(1.6, new Vec2(-x + 6, 0), new Vec2(x - 6, 0))
            .Plus(Outline.Stroke(1.6, new Vec2(-x / 3, -y + 4), new Vec2(-x / 3, y - 4)),
                Outline.Stroke(1.6, new Vec2(x / 3, -y + 4), new Vec2(x / 3, y - 4)));
        box.Raised(ribs, new Vec3(0, 0, Height - 1), Turns.Down, new Level(0), new Level(2.5));
    }

    private void AddVents(Solid box, int side, int count)
    {
        if (count == 0) return;
        Region slot = Outline.Slot(new Vec2(0, Math.Max(7, Height * 0.3)), new Vec2(0, Height - 9), 2.4);
        box.Pierced(slot.Row(count, 6), new Vec3(side * Width, 0, 0), new Vec3(-side, 0, 0));
    }

    private Vec2[] Posts()
    {
        double x = Width / 2 - Wall - PostRadius + 1, y = Depth / 2 - Wall - PostRadius + 1;
        return [new(-x, -y), new(x, -y), new(x, y), new(-x, y)];
    }
}
