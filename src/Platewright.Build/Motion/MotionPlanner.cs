using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Motion;

/// <summary>
/// Plans the speed along a run of moves as a machine's controller does, looking ahead over all of it:
/// <list type="number">
/// <item>each move gets its greatest speed (wanted, path, axes, melt rate) and its length;</item>
/// <item>each vertex gets its greatest speed (both moves, the corner); a start from rest gets 0;</item>
/// <item>backwards: no vertex faster than can be slowed down from, u² ≤ u'² + 2·a·L; forwards likewise;</item>
/// <item>each move takes the closed-form time between the speeds at its ends.</item>
/// </list>
/// The run starts and ends at rest. One planner serves one thread; its buffers are reused from call to call.
/// </summary>
public sealed partial class MotionPlanner
{
    /// <summary>A move shorter than this, mm, is no move: far below the step of any drive.</summary>
    private const double LeastMoveMm = 1e-9;

    private double[] _length = [];
    private double[] _cruise2 = [];
    private double[] _vertex2 = [];
    private double[] _acceleration = [];
    private PathKind[] _kind = [];
    private int _count;

    /// <summary>Speeds at the vertices of the last plan, mm/s: before each move that has a length, and 0 at the end.</summary>
    internal IEnumerable<double> VertexSpeedsMmS => [.. _vertex2[.._count].Select(Math.Sqrt), 0];

    /// <param name="start">Where the run starts, mm.</param>
    /// <param name="moves">In order; a move without a length only stands still.</param>
    /// <param name="limits">What the drives allow.</param>
    /// <param name="meltRateMm3S">Most material melted, mm³/s, above 0; infinite for no such limit.</param>
    /// <param name="yAccelerationShare">
    /// Share of the acceleration in y that is used, above 0 to 1: a bed that carries a tall slender part gets less.
    /// </param>
    /// <exception cref="ArgumentException">A limit or a move is not a number in its range.</exception>
    public MotionTimes Plan(
        Vec3 start, ReadOnlySpan<Move> moves, MotionLimits limits, double meltRateMm3S = double.PositiveInfinity,
        double yAccelerationShare = 1)
    {
        if (!(meltRateMm3S > 0))
            throw new ArgumentOutOfRangeException(nameof(meltRateMm3S), meltRateMm3S, "A melt rate is above 0.");
        var drives = new DriveLimits(limits, yAccelerationShare);
        Reserve(moves.Length);
        MotionTimes times = Prepare(start, moves, drives, meltRateMm3S);
        LookBack(drives);
        PerKind moving = default;
        LookAhead(drives, ref moving);
        if (!double.IsFinite(moving.Sum)) throw new ArgumentException("A move is not finite.", nameof(moves));
        return times with { MovingS = moving };
    }

    private void Reserve(int moves)
    {
        if (_length.Length >= moves) return;
        int size = Math.Max(moves, 2 * _length.Length);
        _length = new double[size];
        _cruise2 = new double[size];
        _vertex2 = new double[size];
        _acceleration = new double[size];
        _kind = new PathKind[size];
    }

    /// <summary>Lengths, greatest speeds and vertex limits; returns all but the times in motion.</summary>
    private MotionTimes Prepare(Vec3 start, ReadOnlySpan<Move> moves, in DriveLimits drives, double meltRateMm3S)
    {
        PerKind path = default, material = default;
        double standstill = 0, ux = 0, uy = 0, uz = 0, before2 = 0;
        Vec3 from = start;
        int n = 0;
        foreach (ref readonly Move move in moves)
        {
            if (move.StandstillS > 0)
            {
                standstill += move.StandstillS;
                before2 = 0;
            }
            double x = move.To.X - from.X, y = move.To.Y - from.Y, z = move.To.Z - from.Z;
            double length2 = x * x + y * y + z * z;
            if (length2 < LeastMoveMm * LeastMoveMm) continue;
            double length = Math.Sqrt(length2);
            double scale = 1 / length;
            x *= scale;
            y *= scale;
            z *= scale;

            double area = move.BeadAreaMm2;
            double cruise = Math.Min(move.SpeedMmS, drives.PerAxis ? drives.SpeedAlong(x, y, z) : drives.SpeedMmS);
            if (cruise * area > meltRateMm3S) cruise = meltRateMm3S / area;
            if (!(cruise > 0 && area >= 0 && length < double.PositiveInfinity)) throw Wrong(move);
            double cruise2 = cruise * cruise;
            double vertex2 = Math.Min(before2, cruise2);
            if (vertex2 > 0) vertex2 = Math.Min(vertex2, drives.CornerSpeedSquared(x - ux, y - uy, z - uz));

            _length[n] = length;
            _cruise2[n] = cruise2;
            _vertex2[n] = vertex2;
            if (drives.PerAxis) _acceleration[n] = drives.AccelerationAlong(x, y, z);
            _kind[n] = move.Kind;
            path[move.Kind] += length;
            material[move.Kind] += length * area;
            n++;
            (ux, uy, uz, before2, from) = (x, y, z, cruise2, move.To);
        }
        _count = n;
        return new MotionTimes(default, standstill, path, material);
    }

    private void LookBack(in DriveLimits drives)
    {
        ReadOnlySpan<double> length = _length.AsSpan(0, _count), acceleration = _acceleration.AsSpan(0, _count);
        Span<double> vertex2 = _vertex2.AsSpan(0, _count);
        double twoA = 2 * drives.AccelerationMmS2, next2 = 0;
        for (int i = vertex2.Length - 1; i >= 0; i--)
        {
            if (drives.PerAxis) twoA = 2 * acceleration[i];
            next2 = Math.Min(vertex2[i], next2 + twoA * length[i]);
            vertex2[i] = next2;
        }
    }

    private void LookAhead(in DriveLimits drives, ref PerKind moving)
    {
        ReadOnlySpan<double> length = _length.AsSpan(0, _count), acceleration = _acceleration.AsSpan(0, _count);
        ReadOnlySpan<double> cruise2 = _cruise2.AsSpan(0, _count);
        ReadOnlySpan<PathKind> kind = _kind.AsSpan(0, _count);
        Span<double> vertex2 = _vertex2.AsSpan(0, _count);
        double a = drives.AccelerationMmS2, perA = 1 / a, start2 = 0, start = 0;
        for (int i = 0; i < vertex2.Length; i++)
        {
            if (drives.PerAxis)
            {
                a = acceleration[i];
                perA = 1 / a;
            }
            double gain = a * length[i];
            double end2 = i + 1 < vertex2.Length ? Math.Min(vertex2[i + 1], start2 + 2 * gain) : 0;
            double mean2 = (start2 + end2) * 0.5;
            double peak2 = Math.Min(cruise2[i], mean2 + gain);
            double end = Math.Sqrt(end2), peak = Math.Sqrt(peak2);
            double cruising = Math.Max(0, length[i] - (peak2 - mean2) * perA);
            moving[kind[i]] += (2 * peak - start - end) * perA + cruising / peak;
            vertex2[i] = start2;
            (start2, start) = (end2, end);
        }
    }

    private static ArgumentException Wrong(in Move move) =>
        new($"Not a move: to {move.To} at {move.SpeedMmS} mm/s with a bead of {move.BeadAreaMm2} mm².", nameof(move));
}
