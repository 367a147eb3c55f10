using System.Globalization;
using Platewright.Formats.Programs;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>What a ready motion program, made for a machine, tells of it.</summary>
/// <param name="File">The program, as it was named.</param>
/// <param name="Reach">Around every place it moves to, mm, in the machine's coordinates.</param>
public sealed record ProgramSeen(string File, Bounds3 Reach)
{
    // A round machine has its origin in the middle: a program made for it goes at least this share as far below zero as
    // above. Others go below only to wipe and to prime. Our choice.
    private const double CentredShare = 0.25;

    // Lengths pulled back that differ by less are the same, mm.
    private const int LengthDigits = 2;

    /// <summary>Greatest speed it asks for along a path, mm/s; null where it leaves that to the machine.</summary>
    public double? SpeedMmS { get; init; }

    /// <summary>Filament it pulls back most often, mm; null where it pulls none.</summary>
    public double? RetractionMm { get; init; }

    /// <summary>Speed of that, mm/s of filament.</summary>
    public double? RetractionSpeedMmS { get; init; }

    /// <summary>Highest temperatures it asks for, °C; 0 for none.</summary>
    public HeatLimits AsksForC { get; init; } = new(0, 0, 0);

    /// <summary>Null for a program that moves nowhere.</summary>
    public static ProgramSeen? Of(MotionProgram program)
    {
        if (program.AllMm is not { } reach) return null;
        (double speed, Vec3 at) = (0, default);
        Dictionary<double, (int Count, double SpeedMmS)> pulls = [];
        foreach (ref readonly ProgramMove move in program.Moves.Span)
        {
            if (move.ToMm != at)
            {
                if (double.IsFinite(move.SpeedMmS)) speed = Math.Max(speed, move.SpeedMmS);
            }
            else if (move.FilamentMm < 0)
            {
                double length = Math.Round(-move.FilamentMm, LengthDigits);
                pulls[length] = (pulls.GetValueOrDefault(length).Count + 1, move.SpeedMmS);
            }
            at = move.ToMm;
        }
        var pull = pulls.Where(p => p.Key > 0).OrderByDescending(p => p.Value.Count).ThenBy(p => p.Key).Take(1).ToArray();
        return new ProgramSeen(program.File, reach)
        {
            SpeedMmS = speed > 0 ? speed : null,
            RetractionMm = pull is [var often] ? often.Key : null,
            RetractionSpeedMmS = pull is [{ Value.SpeedMmS: var pulling }] && double.IsFinite(pulling) ? pulling : null,
            AsksForC = new HeatLimits(
                program.Nozzle?.MostC ?? 0, program.Bed?.MostC ?? 0, program.Chamber?.MostC ?? 0),
        };
    }

    /// <summary>
    /// The least build volume it needs: from the origin, or where that is in the middle, a round one about it.
    /// </summary>
    public BuildVolume LeastVolume()
    {
        Vec3 low = Reach.Min, high = Reach.Max;
        double height = Up(high.Z);
        bool centred = -low.X > CentredShare * high.X && -low.Y > CentredShare * high.Y;
        if (!centred) return new BoxVolume(Up(high.X), Up(high.Y), height);
        double radius = new[] { -low.X, -low.Y, high.X, high.Y }.Max();
        return new CylinderVolume(Up(2 * radius), height);
    }

    /// <summary>How far it leaves a build volume along its axes, mm; 0 where it stays within.</summary>
    public double Beyond(BuildVolume volume)
    {
        Bounds3 space = FreeSpace.BoundsOf(volume);
        (Vec3 below, Vec3 above) = (space.Min - Reach.Min, Reach.Max - space.Max);
        return new[] { below.X, below.Y, above.X, above.Y, above.Z, 0 }.Max();
    }

    /// <summary>The temperatures in words, as <c>nozzle 215 °C, bed 60 °C</c>; null where it asks for none.</summary>
    public string? Heat()
    {
        (string Zone, double C)[] zones =
            [("nozzle", AsksForC.NozzleC), ("bed", AsksForC.BedC), ("chamber", AsksForC.ChamberC)];
        string[] asked =
        [
            .. zones.Where(z => z.C > 0)
                .Select(z => string.Create(CultureInfo.InvariantCulture, $"{z.Zone} {z.C:0.#} °C")),
        ];
        return asked.Length > 0 ? string.Join(", ", asked) : null;
    }

    private static double Up(double mm) => Math.Max(1, Math.Ceiling(mm));
}
