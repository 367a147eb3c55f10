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

    /// <summary>Relative; speeds of a curve's chords that differ by less are the same speed.</summary>
    private const double Rounding = 1e-10;

    private double[] _length = [];
    private double[] _cruise2 = [];
    private double[] _vertex2 = [];
    private double[] _acceleration = [];
    private bool[] _straight = [];
    private PathKind[] _kind = [];
    private readonly JerkPlanner _jerk = new();
    private int _count;

    /// <summary>
    /// The profiles of the last plan within a jerk limit, in order; their moves count those with a length.
    /// </summary>
    internal IEnumerable<PlannedSpan> JerkSpans => _jerk.Spans();

    /// <summary>
    /// Speeds at the vertices of the last plan, mm/s: before each move that has a length, and 0 at the end.
    /// </summary>
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
        PerKind moving = default;
        if (limits.JerkMmS3 is double jerk)
        {
            PlanWithJerk(drives, jerk, ref moving);
        }
        else
        {
            LookBack(drives);
            LookAhead(drives, ref moving);
        }
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
        _straight = new bool[size];
        _kind = new PathKind[size];
    }

    /// <summary>Lengths, greatest speeds and vertex limits; returns all but the times in motion.</summary>
    private MotionTimes Prepare(Vec3 start, ReadOnlySpan<Move> moves, in DriveLimits drives, double meltRateMm3S)
    {
        PerKind path = default, material = default;
        double standstill = 0, ux = 0, uy = 0, uz = 0, before2 = 0;
        Vec3 from = start;
        int n = 0;
        var room = new CornerRoom(drives.ContourToleranceMm, _cruise2, _vertex2);
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
            _straight[n] = false;
            if (vertex2 > 0)
            {
                double dx = x - ux, dy = y - uy, dz = z - uz, turn2 = dx * dx + dy * dy + dz * dz;
                if (turn2 < Corner.StraightTurnSquared)
                {
                    _straight[n] = true;
                    room.GoOn(length);
                }
                else if (drives.SpeedJumps)
                {
                    vertex2 = Math.Min(vertex2, drives.JumpSpeedSquared(turn2));
                }
                else
                {
                    double a = drives.CornerAcceleration(dx, dy, dz, turn2);
                    vertex2 = Math.Min(vertex2, Corner.SpeedSquared(turn2, a, drives.ContourToleranceMm));
                    room.Turn(n, turn2, a, length);
                }
            }
            else
            {
                room.Stop(length);
            }

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
        room.Stop(0);
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

    /// <summary>
    /// Hands the moves on as speeds in place of their squares. Moves straight on at one speed become one; a vertex that
    /// asks for no less than both its moves limits nothing.
    /// </summary>
    private void PlanWithJerk(in DriveLimits drives, double jerkMmS3, ref PerKind moving)
    {
        int n = 0;
        double before2 = double.NaN;
        for (int i = 0; i < _count; i++)
        {
            double cruise2 = _cruise2[i];
            bool free = _vertex2[i] >= cruise2 * (1 - Rounding) && Math.Abs(cruise2 - before2) <= Rounding * cruise2;
            before2 = cruise2;
            if (free && _straight[i] && _kind[i] == _kind[n - 1])
            {
                _length[n - 1] += _length[i];
                continue;
            }
            _vertex2[n] = free ? double.PositiveInfinity : Math.Sqrt(_vertex2[i]);
            _cruise2[n] = Math.Sqrt(cruise2);
            _length[n] = _length[i];
            _kind[n] = _kind[i];
            _acceleration[n] = _acceleration[i];
            n++;
        }
        _count = n;
        _jerk.Plan(n, _length, _cruise2, _vertex2, _acceleration, drives, jerkMmS3);
        _jerk.AddTimes(_kind.AsSpan(0, n), ref moving);
    }

    private static ArgumentException Wrong(in Move move) =>
        new($"Not a move: to {move.To} at {move.SpeedMmS} mm/s with a bead of {move.BeadAreaMm2} mm².", nameof(move));
}
