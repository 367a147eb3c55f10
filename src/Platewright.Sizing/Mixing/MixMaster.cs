using Google.OrTools.Sat;

namespace Platewright.Sizing.Mixing;

/// <summary>
/// Counts alone, with the work's value held up by cuts (Benders decomposition; Benders 1962, Numerische Mathematik
/// 4:238-252): proposes the mix that looks best so far, and bounds every mix not yet tried.
/// </summary>
internal sealed class MixMaster
{
    /// <summary>More groups of projects than this make the master slow; it is then left to the cuts.</summary>
    private const int GroupsAtMost = 400;

    /// <summary>Cuts with greater figures are left out: sums must stay inside 64 bits.</summary>
    private const double GreatestFigure = 1e13;

    /// <summary>Relative rounding of a cut's value, a sum of up to millions of doubles, taken off it.</summary>
    private const double Rounding = 1e-9;

    private const double DeterministicSeconds = 0.2;

    private readonly CpModel _model = new();
    private readonly IntVar[] _counts;
    private readonly BoolVar[] _chosen;
    private readonly IntVar _work;

    public MixMaster(PricedWork work, ulong[] able)
    {
        IntegerMix mix = work.Mix;
        _counts = [.. Enumerable.Range(0, mix.Kinds).Select(k => _model.NewIntVar(mix.Least[k], mix.Most[k], ""))];
        _chosen = [.. _counts.Select(_ => _model.NewBoolVar(""))];
        long dearest = 0;
        for (int j = 0; j < mix.Jobs; j++) dearest += mix.Running.AsSpan(j * mix.Kinds, mix.Kinds).ToArray().Max();
        _work = work.Goal.Coverage ? _model.NewIntVar(-mix.Weight.Sum(), 0, "") : _model.NewIntVar(0, dearest, "");
        LinearExprBuilder total = LinearExpr.NewBuilder();
        total.Add(_work);
        for (int k = 0; k < mix.Kinds; k++)
        {
            _model.Add(_counts[k] >= _chosen[k]);
            _model.Add(_counts[k] <= LinearExpr.Term(_chosen[k], mix.Most[k]));
            if (!work.Goal.Coverage) total.AddTerm(_counts[k], mix.Cost[k]);
        }
        for (int l = 0; l < mix.Limit.Length; l++)
        {
            if (mix.Limit[l] != IntegerMix.NoLimit)
                _model.Add(LinearExpr.WeightedSum(_counts, mix.Use[l]) <= mix.Limit[l]);
        }
        _model.Minimize(total);
        AddGroups(work, able);
    }

    /// <summary>Projects whose jobs ask for the same sets of kinds are covered by the same choices.</summary>
    private void AddGroups(PricedWork work, ulong[] able)
    {
        IntegerMix mix = work.Mix;
        ulong[] SetsOf(int p) => [.. able[mix.FirstJob[p]..mix.FirstJob[p + 1]].Distinct().Order()];
        var groups = Enumerable.Range(0, mix.Projects)
            .GroupBy(p => string.Join(',', SetsOf(p)), StringComparer.Ordinal)
            .Select(g => (Sets: SetsOf(g.First()), Weight: g.Sum(p => mix.Weight[p])))
            .ToArray();
        if (work.Everything)
        {
            foreach (ulong set in groups.SelectMany(g => g.Sets).Distinct().Order()) _model.AddBoolOr(Choices(set));
            return;
        }
        if (groups.Length > GroupsAtMost) return;
        LinearExprBuilder weight = LinearExpr.NewBuilder();
        foreach ((ulong[] sets, long share) in groups)
        {
            BoolVar covered = _model.NewBoolVar("");
            weight.AddTerm(covered, share);
            foreach (ulong set in sets) _model.AddBoolOr(Choices(set).Append(covered.Not()));
        }
        if (work.Goal.Coverage) _model.Add(_work + weight >= 0);
        else _model.Add(weight >= work.Goal.Target);
    }

    private IEnumerable<ILiteral> Choices(ulong set) =>
        _chosen.Where((_, k) => (set >> k & 1) != 0).Select(c => (ILiteral)c);

    public void Add(MixCut cut)
    {
        long value = (long)Math.Floor(cut.Value - Math.Abs(cut.Value) * Rounding) - 1;
        LinearExprBuilder sum = LinearExpr.NewBuilder();
        sum.Add(_work);
        for (int k = 0; k < _counts.Length; k++)
        {
            double unit = cut.PerUnit[k], choice = cut.PerChoice[k] * (1 + Rounding);
            if (!(unit < GreatestFigure && choice < GreatestFigure)) return;
            if (unit > 0) sum.AddTerm(_counts[k], (long)Math.Ceiling(unit));
            if (choice > 0) sum.AddTerm(_chosen[k], (long)Math.Ceiling(choice));
        }
        if (Math.Abs(cut.Value) < GreatestFigure * 1000) _model.Add(sum >= value);
    }

    /// <summary>These counts are done with.</summary>
    public void Forbid(int[] counts) =>
        _model.AddForbiddenAssignments(_counts).AddTuple([.. counts.Select(n => (long)n)]);

    /// <summary>The best-looking counts not yet tried (null: none), and a bound on all not yet tried.</summary>
    public (int[]? Counts, long Bound) Next(MixEffort effort, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        using var solver = new CpSolver();
        solver.StringParameters =
            $"num_workers:1,random_seed:{effort.Seed},linearization_level:2,"
            + $"max_deterministic_time:{DeterministicSeconds}";
        using CancellationTokenRegistration stop = cancellation.Register(solver.StopSearch);
        CpSolverStatus status = solver.Solve(_model);
        cancellation.ThrowIfCancellationRequested();
        return status switch
        {
            CpSolverStatus.Infeasible => (null, long.MaxValue),
            CpSolverStatus.Optimal or CpSolverStatus.Feasible =>
                ([.. _counts.Select(n => (int)solver.Value(n))], (long)Math.Floor(solver.BestObjectiveBound)),
            CpSolverStatus.Unknown => (null, (long)Math.Floor(solver.BestObjectiveBound)),
            _ => throw new InvalidOperationException($"Bug in the mix's master: {_model.Validate()}"),
        };
    }
}
