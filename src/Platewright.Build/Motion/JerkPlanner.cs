namespace Platewright.Build.Motion;

/// <summary>
/// Plans the speed along a run of moves within a jerk limit.
/// <list type="number">
/// <item>Anchors are vertices the plan passes without acceleration: at first the stops, and corners with room enough to
/// reach their limit. Between two anchors runs the
/// fastest double-S profile, over as many vertices as lie between: none of them costs anything by being there.</item>
/// <item>Where the profile is faster than a vertex or a move allows, the slowest such vertex becomes an anchor at its
/// limit, or at what the jerk limit lets it reach from its neighbours; where that is slower than holding the whole span
/// down to the limit, the span is held down.</item>
/// <item>An anchor that proves too fast to slow down from in time is lowered, and the spans before it planned
/// again.</item>
/// </list>
/// Every span is so reachable forwards and backwards within the jerk limit. Anchors fall where limits bind and speed
/// has a valley; along a rising or falling limit the plan climbs in steps below it, so its time is an upper estimate
/// there.
/// </summary>
internal sealed partial class JerkPlanner
{
    /// <summary>Spans of more moves than this ask the tree of minima before they are walked along.</summary>
    private const int WalkAtOnce = 48;

    /// <summary>Relative slack of comparisons: rounding alone must neither split nor lower anything.</summary>
    private const double Slack = 1e-11;

    private readonly RangeMinimum _slowest = new();
    private readonly RangeMinimum _weakest = new();
    private double[] _at = [];
    private double[] _speed = [];
    private double[] _least = [];
    private int[] _pending = [];
    private int[] _spanFirst = [];
    private double[] _spanCap = [];
    private int _spans;
    private int _count;
    private bool _slowestIsBuilt;

    private double[] _length = [];
    private double[] _cruise = [];
    private double[] _limit = [];
    private double[] _acceleration = [];
    private bool _perAxis;
    private double _pathAcceleration;
    private double _jerk;
    private double _fastest;

    /// <summary>
    /// Plans <paramref name="count"/> moves. <paramref name="limit"/> holds the greatest speed at the vertex before
    /// each move, infinite where only the moves themselves limit; 0 is a stop.
    /// </summary>
    public void Plan(
        int count, double[] length, double[] cruise, double[] limit, double[] acceleration, in DriveLimits drives,
        double jerkMmS3)
    {
        (_length, _cruise, _limit, _acceleration) = (length, cruise, limit, acceleration);
        (_perAxis, _pathAcceleration, _jerk) = (drives.PerAxis, drives.AccelerationMmS2, jerkMmS3);
        Reserve(count + 1);
        (_spans, _count) = (0, count);
        if (count == 0) return;
        _fastest = 0;
        for (int k = 0; k < count; k++)
        {
            _fastest = Math.Max(_fastest, cruise[k]);
            _least[k] = Math.Min(limit[k], k > 0 ? Math.Min(cruise[k - 1], cruise[k]) : cruise[k]);
        }
        _slowestIsBuilt = false;
        if (_perAxis) _weakest.Build(acceleration.AsSpan(0, count));
        _speed[0] = _speed[count] = 0;
        for (int first = 0, end; first < count; first = end)
        {
            _at[first] = 0;
            end = first;
            double at = 0;
            do
            {
                at += length[end++];
                // Where the next stretch starts both distances hold, one after the other.
                _at[end] = at;
            }
            while (end < count && !IsSurelyAnchor(end));
            if (end < count) _speed[end] = limit[end];
            PlanBetween(first, end);
        }
        _spanFirst[_spans] = count;
    }

    /// <summary>The plan, in order.</summary>
    public IEnumerable<PlannedSpan> Spans()
    {
        for (int i = 0; i < _spans; i++) yield return new PlannedSpan(_spanFirst[i], _spanFirst[i + 1], Profile(i));
    }

    /// <summary>Adds the time of every move to its kind.</summary>
    public void AddTimes(ReadOnlySpan<PathKind> kind, ref PerKind moving)
    {
        for (int i = 0; i < _spans; i++)
        {
            int first = _spanFirst[i], end = _spanFirst[i + 1];
            DoubleS profile = Profile(i);
            if (!kind[first..end].ContainsAnyExcept(kind[first]))
            {
                moving[kind[first]] += profile.TimeS;
                continue;
            }
            double before = 0, at = 0;
            for (int k = first; k < end; k++)
            {
                at += _length[k];
                double time = k + 1 == end ? profile.TimeS : profile.TimeAt(at);
                moving[kind[k]] += time - before;
                before = time;
            }
        }
    }

    private DoubleS Profile(int span)
    {
        int first = _spanFirst[span], end = _spanFirst[span + 1];
        double distance = 0;
        for (int k = first; k < end; k++) distance += _length[k];
        return DoubleS.Fastest(
            distance, _spanCap[span], AccelerationOf(first, end), _jerk, _speed[first], _speed[end]);
    }

    private void Reserve(int vertices)
    {
        if (_at.Length >= vertices) return;
        int size = Math.Max(vertices, 2 * _at.Length);
        _at = new double[size];
        _speed = new double[size];
        _least = new double[size];
        _pending = new int[size];
        _spanFirst = new int[size];
        _spanCap = new double[size];
    }

    /// <summary>
    /// True for a stop, and for a vertex whose limit binds whatever lies around: even from rest both moves at it reach
    /// its limit, and from its limit any lower speed.
    /// </summary>
    private bool IsSurelyAnchor(int vertex)
    {
        double limit = _limit[vertex];
        if (limit == 0) return true;
        if (double.IsInfinity(limit)) return false;
        return IsRoom(_length[vertex - 1], vertex - 1) && IsRoom(_length[vertex], vertex);

        bool IsRoom(double length, int move) =>
            SpeedChange.Distance(0, limit, AccelerationOf(move, move + 1), _jerk) * SpeedChange.MostOverRest <= length;
    }

    /// <summary>Plans between two anchors that stay as they are.</summary>
    private void PlanBetween(int first, int end)
    {
        if (end - first > WalkAtOnce && !_slowestIsBuilt)
        {
            _slowest.Build(_least.AsSpan(0, _count));
            _slowestIsBuilt = true;
        }
        int left = first, pending = 0;
        _pending[pending++] = end;
        while (pending > 0)
        {
            int right = _pending[pending - 1];
            double distance = _at[right] - _at[left], a = AccelerationOf(left, right);
            if (_speed[left] > _speed[right] && !Reaches(_speed[right], _speed[left], distance, a))
            {
                // Too fast to slow down from. That is never the first anchor, so a span lies before this one.
                _speed[left] = SpeedChange.Reach(_speed[right], distance, a, _jerk);
                _pending[pending++] = left;
                left = _spanFirst[--_spans];
                continue;
            }
            if (_speed[right] > _speed[left] && !Reaches(_speed[left], _speed[right], distance, a))
                _speed[right] = SpeedChange.Reach(_speed[left], distance, a, _jerk);
            int anchor = PlanSpan(left, right, distance, a, out double cap);
            if (anchor >= 0)
            {
                _pending[pending++] = anchor;
                continue;
            }
            _spanFirst[_spans] = left;
            _spanCap[_spans++] = cap;
            left = right;
            pending--;
        }
    }

    /// <summary>
    /// Tries one profile from anchor to anchor. Returns the vertex that has to become an anchor (its speed is set), or
    /// -1 where the profile keeps all limits when held to <paramref name="cap"/>.
    /// </summary>
    private int PlanSpan(int left, int right, double distance, double a, out double cap)
    {
        double start = _speed[left], end = _speed[right];
        cap = right - left == 1 ? _cruise[left] : _fastest;
        while (true)
        {
            DoubleS profile = DoubleS.Fastest(distance, cap, a, _jerk, start, end);
            if (right - left == 1) return -1;
            switch (Check(left, right, profile, out int vertex, out double cruise))
            {
                case Finding.None:
                    return -1;
                case Finding.Move:
                    cap = Math.Max(cruise, Math.Max(start, end));
                    break;
                default:
                    double speed = AnchorSpeed(left, vertex, right);
                    if (speed < _limit[vertex] && _limit[vertex] >= Math.Max(start, end)
                        && !SplitIsFaster(left, vertex, right, speed, cap, distance, a))
                    {
                        cap = _limit[vertex];
                        break;
                    }
                    _speed[vertex] = speed;
                    return vertex;
            }
        }
    }

    /// <summary>The greatest speed an anchor may have: its limit, or what its neighbours reach.</summary>
    private double AnchorSpeed(int left, int vertex, int right)
    {
        double limit = _limit[vertex];
        return Math.Min(Within(left, _at[vertex] - _at[left], AccelerationOf(left, vertex)),
            Within(right, _at[right] - _at[vertex], AccelerationOf(vertex, right)));

        double Within(int anchor, double distance, double a) =>
            limit <= _speed[anchor] || Reaches(_speed[anchor], limit, distance, a)
                ? limit
                : Math.Min(limit, SpeedChange.Reach(_speed[anchor], distance, a, _jerk));
    }

    private bool SplitIsFaster(int left, int vertex, int right, double speed, double cap, double distance, double a)
    {
        double start = _speed[left], end = _speed[right];
        double before = _at[vertex] - _at[left], after = distance - before;
        double aBefore = AccelerationOf(left, vertex), aAfter = AccelerationOf(vertex, right);
        if (speed < start && !Reaches(speed, start, before, aBefore)) return false;
        if (speed < end && !Reaches(speed, end, after, aAfter)) return false;
        double split = DoubleS.Fastest(before, cap, aBefore, _jerk, start, speed).TimeS
            + DoubleS.Fastest(after, cap, aAfter, _jerk, speed, end).TimeS;
        return split < DoubleS.Fastest(distance, _limit[vertex], a, _jerk, start, end).TimeS;
    }

    private bool Reaches(double low, double high, double distance, double a) =>
        SpeedChange.Distance(low, high, a, _jerk) <= distance * (1 + Slack);

    private double AccelerationOf(int first, int end) => !_perAxis ? _pathAcceleration
        : end - first == 1 ? _acceleration[first]
        : _weakest.Least(first, end);
}
