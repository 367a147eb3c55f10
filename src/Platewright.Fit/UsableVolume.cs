using Platewright.Fit.Planar;
using Platewright.Fit.Proofs;
using Platewright.Fit.Search;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Fit;

/// <summary>A build volume less its margins: what a part must lie in.</summary>
internal sealed class UsableVolume
{
    private readonly ProvedVolume _proved;

    private UsableVolume(
        Surface surface, Container container, Vec2 middle, double heightMm, IReadOnlyList<Bounds3> keepOuts, ProvedVolume proved)
    {
        Surface = surface;
        Container = container;
        Middle = middle;
        HeightMm = heightMm;
        KeepOuts = keepOuts;
        _proved = proved;
    }

    public Surface Surface { get; }

    public Container Container { get; }

    /// <summary>A point of the surface as far from its walls as any: where a smaller copy shrinks towards.</summary>
    public Vec2 Middle { get; }

    public double HeightMm { get; }

    public IReadOnlyList<Bounds3> KeepOuts { get; }

    /// <summary>The same volume in the words of a written proof.</summary>
    public ProvedVolume ToProved() => _proved;

    /// <summary>
    /// What a part on support must lie in: support stands under all of it, so the brim surrounds the whole shadow. Null
    /// where the brim leaves no room.
    /// </summary>
    public static UsableVolume? ForSupported(Machine machine, double brimMm)
    {
        Margins m = machine.Margins;
        var margins = new Margins(m.LeftMm + brimMm, m.RightMm + brimMm, m.FrontMm + brimMm, m.BackMm + brimMm, m.TopMm);
        try
        {
            return Of(machine with { Margins = margins });
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    /// <exception cref="ArgumentException">The margins leave no room.</exception>
    public static UsableVolume Of(Machine machine)
    {
        Margins margins = machine.Margins;
        double height = machine.BuildVolume.HeightMm - margins.TopMm;
        if (height <= 0) throw NoRoom(machine);
        switch (machine.BuildVolume)
        {
            case BoxVolume box:
                double x = box.WidthMm - margins.LeftMm - margins.RightMm;
                double y = box.DepthMm - margins.FrontMm - margins.BackMm;
                if (x <= 0 || y <= 0) throw NoRoom(machine);
                Vec2 corner = new(margins.LeftMm, margins.FrontMm);
                return new UsableVolume(
                    PolygonSurface.Rectangle(corner, x, y), new BoxContainer(x, y, height), corner + new Vec2(x, y) * 0.5, height,
                    machine.KeepOuts, new ProvedVolume("box", corner, new Vec2(x, y), 0, [], height));
            case CylinderVolume cylinder:
                double radius = cylinder.DiameterMm / 2 - margins.LeftMm;
                if (radius <= 0) throw NoRoom(machine);
                return new UsableVolume(
                    new RoundSurface(radius), new CylinderContainer(radius, height), default, height, machine.KeepOuts,
                    new ProvedVolume("cylinder", default, default, radius, [], height));
            case PrismVolume prism:
                Vec2[] polygon = PolygonWalls.Inset(prism.PolygonMm.AsSpan(), margins.LeftMm);
                if (polygon.Length < 3) throw NoRoom(machine);
                var surface = new PolygonSurface(polygon);
                return new UsableVolume(
                    surface, new PrismContainer(polygon, height), surface.Middle, height, machine.KeepOuts,
                    new ProvedVolume("prism", default, default, 0, polygon, height));
            default:
                throw new ArgumentException($"Unknown build volume {machine.BuildVolume.GetType().Name}.", nameof(machine));
        }
    }

    private static ArgumentException NoRoom(Machine machine) =>
        new($"The margins of {machine.Name} leave no room in its build volume; make them smaller.", nameof(machine));
}
