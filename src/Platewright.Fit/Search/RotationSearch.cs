using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>What a search over rotations found and proved.</summary>
/// <param name="Rotation">The rotation that reaches <paramref name="Scale"/>.</param>
/// <param name="Scale">The largest scale reached.</param>
/// <param name="UpperBound">No rotation allows a larger one.</param>
/// <param name="Cells">Cells of rotation space that were bounded.</param>
/// <param name="Closed">False when the budget of cells ran out before the gap closed.</param>
/// <param name="Tried">Every local optimum that was polished, in the order of the search.</param>
internal readonly record struct SearchResult(
    Rotation Rotation, double Scale, double UpperBound, int Cells, bool Closed, IReadOnlyList<Rotation> Tried);

/// <summary>
/// Branch and bound over rotations for the largest copy of a convex part in a convex container. A cell of Rodrigues
/// vectors is given up when contacts with weights m prove that no rotation within angle α of its centre does better than
/// the incumbent.
/// </summary>
/// <remarks>
/// With M = Σ m Σ n (R v)ᵀ the weighted value after a turn by t about unit w is cos t · tr M + sin t · w·g +
/// (1 − cos t) · wᵀ S w, where g is the axial vector and S the symmetric part of M. It is therefore at least
/// cos α · tr M − sin α · |g| + (1 − cos α) · λ_min(S) for t ≤ α ≤ π/2 when that is below tr M: a second-order bound, since
/// at a strict optimum weights exist with g = 0.
/// </remarks>
internal sealed class RotationSearch
{
    // Cells of rotation space are not split below this half edge (Rodrigues units): doubles end there.
    private const double LeastHalf = 1e-13;
    private const int MostEntries = 14;
    private readonly SupportGrid _part;
    private readonly Container _container;
    private readonly Polisher _polisher;
    private readonly ActiveSet _active = new();
    private readonly List<Rotation> _tried = [];
    private readonly Contact[] _touch = new Contact[Container.MostContacts];
    private readonly ICellListener? _listener;
    private readonly CancellationToken _stop;
    private double _best;
    private double _threshold;
    private double _gap;
    private Rotation _bestRotation;
    private double _leastBound;
    private int _cells;
    private int _budget;
    private bool _open;
    private int[]? _near;

    public RotationSearch(SupportGrid part, Container container, ICellListener? listener, CancellationToken stop)
    {
        _part = part;
        _container = container;
        _polisher = new Polisher(part, container);
        _listener = listener;
        _stop = stop;
    }

    /// <summary>
    /// Searches until the gap is closed or the budget of cells is spent. Rotations in <paramref name="starts"/> are
    /// tried first; a good one makes the search short.
    /// </summary>
    /// <param name="knownBound">A scale already proved impossible to exceed.</param>
    public SearchResult Run(
        ReadOnlySpan<Rotation> starts, double tolerance, int mostCells, double knownBound = double.PositiveInfinity)
    {
        _gap = tolerance;
        _budget = mostCells;
        _best = double.PositiveInfinity;
        _leastBound = double.PositiveInfinity;
        foreach (Rotation start in starts) Try(start, 0.2);
        if (!IsSettled()) SeedFromCoarseCells();
        if (IsSettled()) return new SearchResult(_bestRotation, 1 / _best, Math.Max(knownBound, 1 / _best), 0, true, _tried);
        Refine([.. _container.Domain.Charts.Select(chart => new Cell(chart, default, 0))], 1);
        double least = Math.Min(_leastBound, _best) * (1 - Tolerances.Rounding);
        // What is written down must be what is claimed: with a listener only the cells count.
        double bound = _listener is null ? Math.Min(1 / least, knownBound) : 1 / least;
        return new SearchResult(_bestRotation, 1 / _best, bound, _cells, !_open, _tried);

        bool IsSettled() => knownBound * _best <= 1 + tolerance;
    }

    /// <summary>The reciprocal of the largest scale at a rotation.</summary>
    public double ValueAt(Rotation rotation) => _polisher.ValueAt(rotation.ToMatrix(), out _, out _);

    private void Try(Rotation rotation, double trust)
    {
        double value = _polisher.Polish(ref rotation, trust);
        _tried.Add(rotation);
        if (value >= _best) return;
        _best = value;
        _bestRotation = rotation;
        _threshold = _best * (1 - _gap * (1 - 1e-6));
    }

    // Local searches from the best few of the coarse cells' centres.
    private void SeedFromCoarseCells()
    {
        const int Side = 4;
        const int Seeds = 6;
        RotationDomain domain = _container.Domain;
        var centers = new List<(double Value, Rotation Rotation)>();
        double half = 1.0 / Side;
        foreach (int chart in domain.Charts)
        {
            for (int i = 0; i < Side * Side * Side; i++)
            {
                if (domain.Flat && i >= Side * Side) break;
                Vec3 c = new(
                    -1 + half * (2 * (i % Side) + 1), -1 + half * (2 * (i / Side % Side) + 1),
                    domain.Flat ? 0 : -1 + half * (2 * (i / (Side * Side)) + 1));
                if (domain.Excludes(c, half)) continue;
                Rotation r = RotationDomain.RotationAt(chart, c);
                centers.Add((ValueAt(r), r));
            }
        }
        centers.Sort((a, b) => a.Value.CompareTo(b.Value));
        for (int i = 0; i < Math.Min(Seeds, centers.Count); i++) Try(centers[i].Rotation, 0.3);
    }

    // Level by level, so that a coarse look everywhere comes before a close look anywhere: the incumbent is found early.
    private void Refine(List<Cell> level, double half)
    {
        RotationDomain domain = _container.Domain;
        int children = domain.Flat ? 4 : 8;
        var pools = new List<(Contact[] Contacts, int[]? Near)> { ([], null) };
        while (level.Count > 0)
        {
            var next = new List<Cell>();
            var nextPools = new List<(Contact[] Contacts, int[]? Near)>();
            foreach (Cell cell in level)
            {
                if (domain.Excludes(cell.Center, half))
                {
                    _listener?.Outside();
                    continue;
                }
                double bound = 0;
                double alpha = domain.RadiusOf(cell.Center, half);
                bool bounded = alpha < Math.PI / 2;
                if (bounded)
                {
                    _cells++;
                    if ((_cells & 1023) == 0) _stop.ThrowIfCancellationRequested();
                    bound = Bound(RotationDomain.RotationAt(cell.Chart, cell.Center), alpha, pools[cell.Pool].Contacts, pools[cell.Pool].Near);
                    if (bound >= _threshold)
                    {
                        _leastBound = Math.Min(_leastBound, bound);
                        _listener?.Closed(_active.Weights());
                        continue;
                    }
                }
                if (_cells >= _budget || half < LeastHalf)
                {
                    _open = true;
                    _leastBound = Math.Min(_leastBound, bound);
                    _listener?.Open();
                    continue;
                }
                _listener?.Split();
                nextPools.Add(bounded ? (_active.Contacts(), _near) : ([], null));
                double h = half / 2;
                for (int i = 0; i < children; i++)
                {
                    Vec3 c = new(
                        cell.Center.X + ((i & 1) == 0 ? -h : h), cell.Center.Y + ((i & 2) == 0 ? -h : h),
                        domain.Flat ? 0 : cell.Center.Z + ((i & 4) == 0 ? -h : h));
                    next.Add(new Cell(cell.Chart, c, nextPools.Count - 1));
                }
            }
            _container.Widen();
            level = next;
            pools = nextPools;
            half /= 2;
        }
    }

    // A proved lower bound of the value over the ball of radius alpha; the weights stay in _active.
    private double Bound(Rotation rotation, double alpha, ReadOnlySpan<Contact> pool, int[]? near)
    {
        Matrix3 r = rotation.ToMatrix();
        Matrix3 transposed = r.Transposed();
        ReadOnlySpan<Vec3> vertices = _part.Vertices;
        double cos = Math.Cos(alpha), sin = Math.Sin(alpha);

        _near = _container.Narrow(_part, r, alpha, near);
        int touching = _container.Touch(_part, r, _touch);
        int first = 0;
        double most = double.NegativeInfinity;
        Matrix3 matrix = default;
        for (int k = 0; k < touching; k++)
        {
            Matrix3 m = _touch[k].Moment(vertices) * transposed;
            double value = ActiveSet.ValueOf(m);
            // A single contact often closes the cell.
            if (value >= _threshold && BallBound(m, cos, sin) is double alone && alone >= _threshold)
            {
                _active.Start(_touch[k], m, alpha);
                return alone;
            }
            if (value <= most) continue;
            (first, most, matrix) = (k, value, m);
        }
        if (most < _threshold)
        {
            _container.Widen();
            Try(rotation, alpha);
            _near = _container.Narrow(_part, r, alpha, near);
        }
        _active.Start(_touch[first], matrix, alpha);
        double best = BallBound(matrix, cos, sin);

        for (int k = 0; k < pool.Length && best < _threshold; k++)
        {
            Matrix3 m = pool[k].Moment(vertices) * transposed;
            if (_active.Excess(m) <= 1e-12 * most || !_active.Enter(pool[k], m)) continue;
            best = Math.Max(best, BallBound(_active.Mixture(), cos, sin));
        }
        for (int i = 0; i < MostEntries && best < _threshold; i++)
        {
            Matrix3 at = Polisher.Turned(rotation, _active.Step).ToMatrix();
            touching = _container.Touch(_part, at, _touch);
            int which = -1;
            double excess = 1e-9 * most;
            for (int k = 0; k < touching; k++)
            {
                Matrix3 m = _touch[k].Moment(vertices) * transposed;
                double e = _active.Excess(m);
                if (e <= excess) continue;
                (which, excess, matrix) = (k, e, m);
            }
            if (which < 0 || !_active.Enter(_touch[which], matrix)) break;
            best = Math.Max(best, BallBound(_active.Mixture(), cos, sin));
        }
        return best;
    }

    private double BallBound(in Matrix3 mixture, double cos, double sin)
    {
        double value = ActiveSet.ValueOf(mixture);
        double straight = cos * value - sin * ActiveSet.GradientOf(mixture).Length;
        // The least eigenvalue is at most a third of the trace: no need to find it where that is not enough.
        if (straight + (1 - cos) * value / 3 < _threshold) return straight - (1 - cos) * Norm(mixture);
        return Math.Min(value, straight + (1 - cos) * SymmetricEigen.Least(mixture));
    }

    // The Frobenius norm: no eigenvalue of the symmetric part is below its negative.
    private static double Norm(in Matrix3 m) =>
        Math.Sqrt(m.Row0.Dot(m.Row0) + m.Row1.Dot(m.Row1) + m.Row2.Dot(m.Row2));

    /// <param name="Pool">Which of the level's lists inherited from the cells above: contacts to try first, vertices to look at.</param>
    private readonly record struct Cell(int Chart, Vec3 Center, int Pool);
}
