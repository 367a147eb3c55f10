using Google.OrTools.Sat;

namespace Platewright.Sizing.Mixing;

/// <summary>
/// The whole problem for a constraint solver that works on integers, so that its bound is free of rounding. One worker,
/// a fixed seed and deterministic time: the same answer everywhere.
/// </summary>
internal static class ExactMix
{
    public static MixOutcome Solve(IntegerMix mix, MixGoal goal, MixEffort effort, CancellationToken cancellation)
    {
        var model = new CpModel();
        IntVar[] counts =
            [.. Enumerable.Range(0, mix.Kinds).Select(k => model.NewIntVar(mix.Least[k], mix.Most[k], ""))];
        ILiteral[] chosen = [.. Enumerable.Range(0, mix.Kinds).Select(k => Chosen(model, mix, counts, k))];
        LinearExprBuilder[] hours = [.. counts.Select(_ => LinearExpr.NewBuilder())];
        LinearExprBuilder cost = LinearExpr.NewBuilder();
        LinearExprBuilder weight = LinearExpr.NewBuilder();
        var made = new BoolVar?[mix.Jobs * mix.Kinds];
        bool everything = !goal.Coverage && goal.Target >= mix.Weight.Sum();
        for (int p = 0; p < mix.Projects; p++)
        {
            BoolVar covered = model.NewBoolVar("");
            if (everything) model.AddBoolAnd([covered]);
            weight.AddTerm(covered, mix.Weight[p]);
            for (int j = mix.FirstJob[p]; j < mix.FirstJob[p + 1]; j++)
            {
                List<ILiteral> ways = [covered.Not()];
                for (int k = 0; k < mix.Kinds; k++)
                {
                    if (!mix.Can(j, k)) continue;
                    int at = j * mix.Kinds + k;
                    BoolVar way = model.NewBoolVar("");
                    made[at] = way;
                    ways.Add(way);
                    model.AddImplication(way, chosen[k]);
                    hours[k].AddTerm(way, mix.Hours[at]);
                    cost.AddTerm(way, mix.Running[at]);
                }
                model.AddExactlyOne(ways);
            }
        }
        for (int k = 0; k < mix.Kinds; k++)
        {
            model.Add(hours[k] <= LinearExpr.Term(counts[k], mix.Capacity[k]));
            cost.AddTerm(counts[k], mix.Cost[k]);
        }
        for (int l = 0; l < mix.Limit.Length; l++)
        {
            if (mix.Limit[l] != IntegerMix.NoLimit)
                model.Add(LinearExpr.WeightedSum(counts, mix.Use[l]) <= mix.Limit[l]);
        }
        if (goal.Coverage) model.Maximize(weight);
        else
        {
            model.Add(weight >= goal.Target);
            model.Minimize(cost);
        }
        return Run(mix, goal, effort, model, counts, made, cancellation);
    }

    private static ILiteral Chosen(CpModel model, IntegerMix mix, IntVar[] counts, int kind)
    {
        if (mix.Least[kind] > 0) return model.TrueLiteral();
        BoolVar chosen = model.NewBoolVar("");
        model.Add(counts[kind] >= chosen);
        model.Add(counts[kind] <= LinearExpr.Term(chosen, mix.Most[kind]));
        return chosen;
    }

    private static MixOutcome Run(
        IntegerMix mix, MixGoal goal, MixEffort effort, CpModel model, IntVar[] counts, BoolVar?[] made,
        CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        using var solver = new CpSolver();
        // Without the full linear relaxation the covering part of the problem has hardly a bound.
        solver.StringParameters =
            $"num_workers:1,random_seed:{effort.Seed},linearization_level:2,"
            + $"max_deterministic_time:{effort.DeterministicSeconds:r}";
        using CancellationTokenRegistration stop = cancellation.Register(solver.StopSearch);
        CpSolverStatus status = solver.Solve(model);
        cancellation.ThrowIfCancellationRequested();
        if (status == CpSolverStatus.Infeasible) return new(null, long.MaxValue, MixStop.Proved);
        if (status == CpSolverStatus.ModelInvalid)
            throw new InvalidOperationException($"Bug in the mix's model: {model.Validate()}");
        // Before its first relaxation the solver's own bound means nothing: this one always holds.
        long trivial = goal.Coverage ? -mix.Weight.Sum() : 0;
        if (status == CpSolverStatus.Unknown) return new(null, trivial, MixStop.EffortSpent);
        var kindOfJob = new int[mix.Jobs];
        for (int j = 0; j < mix.Jobs; j++)
        {
            int row = j * mix.Kinds;
            int at = Array.FindIndex(made, row, mix.Kinds, m => m is not null && solver.BooleanValue(m));
            kindOfJob[j] = at < 0 ? -1 : at - row;
        }
        int[] found = [.. counts.Select(n => (int)solver.Value(n))];
        long value = (long)Math.Round(solver.ObjectiveValue) * (goal.Coverage ? -1 : 1);
        long proved = (long)Math.Round(solver.BestObjectiveBound) * (goal.Coverage ? -1 : 1);
        long bound = proved <= value ? Math.Max(trivial, proved) : trivial;
        MixStop stopped = status == CpSolverStatus.Optimal ? MixStop.Proved : MixStop.EffortSpent;
        return new(new(found, kindOfJob, value), bound, stopped);
    }
}
