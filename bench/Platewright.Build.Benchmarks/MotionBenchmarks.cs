using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Benchmarks;

/// <summary>Moves planned per second: one layer over and over, as a part of many layers does it.</summary>
internal static class MotionBenchmarks
{
    private const int Runs = 5;
    private const int Batch = 5;
    private const double LeastSeconds = 0.4;

    public static void Measure()
    {
        var path = new MotionLimits(200, 3000, 0.02);
        var axes = path with { AxisSpeedMmS = new(200, 200, 12), AxisAccelerationMmS2 = new(3000, 2500, 100) };
        foreach ((string name, Move[] layer) in new[] { ("curves", Curves()), ("raster", Raster()), ("mixed", Mixed()) })
        {
            Report($"{name}, {layer.Length} moves, trapezoid", layer, path);
            Report($"{name}, {layer.Length} moves, trapezoid, axes", layer, axes);
            Report($"{name}, {layer.Length} moves, jerk", layer, path with { JerkMmS3 = 200_000 });
        }
    }

    /// <summary>
    /// Best of several runs, by processor time: the computer does other things besides. All processors together reach the
    /// figure times their number, as planners share nothing.
    /// </summary>
    private static void Report(string name, Move[] layer, MotionLimits limits)
    {
        double best = 0;
        var planner = new MotionPlanner();
        for (int run = 0; run < Runs; run++)
        {
            long moves = 0;
            double start = Environment.CpuUsage.TotalTime.TotalSeconds, taken = 0;
            while (taken < LeastSeconds)
            {
                for (int i = 0; i < Batch; i++) planner.Plan(default, layer, limits);
                moves += Batch * layer.Length;
                taken = Environment.CpuUsage.TotalTime.TotalSeconds - start;
            }
            best = Math.Max(best, moves / taken);
        }
        Console.WriteLine($"{name,-40} {best / 1e6,7:f2} million moves per processor second");
    }

    /// <summary>Walls of round islands: chords of about 0.5 mm, travels between.</summary>
    private static Move[] Curves()
    {
        var moves = new List<Move>();
        for (int island = 0; island < 40; island++)
        {
            Vec3 centre = new(25 * (island % 8), 25 * (island / 8), 0.2);
            double radius = 2 + island % 9;
            int chords = (int)(2 * Math.PI * radius / 0.5);
            for (int wall = 0; wall < 3; wall++)
            {
                for (int i = 0; i <= chords; i++)
                {
                    double angle = 2 * Math.PI * i / chords, r = radius - 0.45 * wall;
                    Vec3 to = centre + new Vec3(r * Math.Cos(angle), r * Math.Sin(angle) * 1.3, 0);
                    moves.Add(i == 0 ? new(to, 300, 0, 0.06, PathKind.Travel) : new(to, 120, 0.08, 0, PathKind.Wall));
                }
            }
        }
        return [.. moves];
    }

    /// <summary>A solid face: lines 40 mm long at 0.4 mm pitch.</summary>
    private static Move[] Raster()
    {
        var moves = new List<Move>();
        for (int i = 0; i < 2000; i++)
        {
            moves.Add(new(new(i % 2 * 40, i * 0.4, 0.2), 100, 0.08, 0, PathKind.SolidFace));
            moves.Add(new(new((i + 1) % 2 * 40, i * 0.4, 0.2), 100, 0.08, 0, PathKind.SolidFace));
        }
        return [.. moves];
    }

    /// <summary>Outlines with noise in their corners, as sliced meshes have it.</summary>
    private static Move[] Mixed()
    {
        var random = new Random(11);
        var moves = new List<Move>();
        double heading = 0;
        Vec3 at = default;
        for (int i = 0; i < 20_000; i++)
        {
            heading += (random.NextDouble() - 0.45) * (i % 37 == 0 ? 3 : 0.4);
            at += new Vec3(Math.Cos(heading), Math.Sin(heading), 0) * (0.05 + 2 * random.NextDouble() * random.NextDouble());
            moves.Add(new(at, 120, 0.08, 0, PathKind.Wall));
        }
        return [.. moves];
    }
}
