using System.Collections.Immutable;
using Platewright.Formats.Programs;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Programs;

/// <summary>
/// Whether a program stays within a machine: every move within the build volume, and where it lays material down within
/// the volume less its margins. It speaks of the nozzle's path; half a bead lies outside of it.
/// </summary>
public static class ProgramFit
{
    /// <summary>Less is rounding of the program's numbers, mm.</summary>
    private const double ToleranceMm = 0.005;

    /// <summary>The furthest overrun in each direction, material first; empty where the program fits.</summary>
    public static IReadOnlyList<ProgramOverrun> Check(MotionProgram program, Machine machine)
    {
        Wall[] outer = WallsOf(machine.BuildVolume, Margins.None);
        Wall[] inner = WallsOf(machine.BuildVolume, machine.Margins);
        var travel = new Furthest(outer);
        var laid = new Furthest(inner);
        Vec3? from = null;
        foreach (ref readonly ProgramMove move in program.Moves.Span)
        {
            if (from != move.ToMm)
            {
                travel.Note(move.ToMm, move.Line);
                if (move.FilamentMm > 0)
                {
                    laid.Note(move.ToMm, move.Line);
                    // The first move of a program starts where nobody says.
                    if (from is Vec3 start) laid.Note(start, move.Line);
                }
            }
            from = move.ToMm;
        }
        return [.. laid.Overruns(extruding: true), .. travel.Overruns(extruding: false)];
    }

    private static Wall[] WallsOf(BuildVolume volume, Margins margins)
    {
        Wall bottom = new("-z", new(0, 0, -1), 0), top = new("z", new(0, 0, 1), volume.HeightMm - margins.TopMm);
        return volume switch
        {
            BoxVolume box =>
            [
                new("-x", new(-1, 0, 0), -margins.LeftMm), new("x", new(1, 0, 0), box.WidthMm - margins.RightMm),
                new("-y", new(0, -1, 0), -margins.FrontMm), new("y", new(0, 1, 0), box.DepthMm - margins.BackMm),
                bottom, top,
            ],
            CylinderVolume round => [new("outwards", null, round.DiameterMm / 2 - margins.LeftMm), bottom, top],
            PrismVolume prism => [.. SidesOf(prism.PolygonMm, margins.LeftMm), bottom, top],
            _ => throw new ArgumentException($"Unknown build volume {volume.GetType().Name}.", nameof(volume)),
        };
    }

    private static IEnumerable<Wall> SidesOf(ImmutableArray<Vec2> corners, double marginMm)
    {
        for (int i = 0; i < corners.Length; i++)
        {
            Vec2 side = (corners[(i + 1) % corners.Length] - corners[i]).Normalized();
            // Corners run counter-clockwise, so outwards is to the right of a side.
            Vec3 outwards = new(side.Y, -side.X, 0);
            yield return new("outwards", outwards, outwards.Dot(new(corners[i].X, corners[i].Y, 0)) - marginMm);
        }
    }

    /// <summary>
    /// A plane with a normal outwards at an offset, or without a normal a cylinder of that radius about z.
    /// </summary>
    private readonly record struct Wall(string Direction, Vec3? Normal, double Offset)
    {
        public double Beyond(Vec3 p) =>
            (Normal is Vec3 normal ? normal.Dot(p) : Math.Sqrt(p.X * p.X + p.Y * p.Y)) - Offset;
    }

    /// <summary>The worst beyond each wall so far.</summary>
    private sealed class Furthest(Wall[] walls)
    {
        private readonly double[] _beyond = new double[walls.Length];
        private readonly int[] _line = new int[walls.Length];

        public void Note(Vec3 p, int line)
        {
            for (int i = 0; i < walls.Length; i++)
            {
                double beyond = walls[i].Beyond(p);
                if (beyond > _beyond[i]) (_beyond[i], _line[i]) = (beyond, line);
            }
        }

        public IEnumerable<ProgramOverrun> Overruns(bool extruding) => Enumerable.Range(0, walls.Length)
            .Where(i => _beyond[i] > ToleranceMm)
            .Select(i => new ProgramOverrun(walls[i].Direction, _beyond[i], _line[i], extruding))
            .OrderByDescending(o => o.ByMm)
            .DistinctBy(o => o.Direction);
    }
}
