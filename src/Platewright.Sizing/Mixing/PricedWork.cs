namespace Platewright.Sizing.Mixing;

/// <summary>
/// The work with a price on each kind's hours and on weight. With prices the jobs no longer compete for hours, so each
/// takes its cheapest kind, and the value is a bound for every mix (Lagrangian relaxation; Geoffrion 1974, Mathematical
/// Programming Study 2:82-114).
/// </summary>
/// <remarks>
/// For prices λ ≥ 0 per hour of kind k, μ ≥ 0 per weight, and any v ≥ 0 per job, linear duality gives for every mix
/// n with its set of chosen kinds: value of the work ≥ μ·T − Σ over projects (g + μ·w − Σ v)⁺ − Σ λ·C·n
/// − Σ over chosen kinds Σ over jobs (v − r − λ·h)⁺, with T the target, g what covering earns (the coverage goal), r
/// the running cost, h the hours and C the capacity. v is taken from the kinds that are open, where the last sum is then 0.
/// </remarks>
internal sealed class PricedWork
{
    private readonly double[] _hours;
    private readonly double[] _running;
    private readonly double[] _gain;

    public PricedWork(IntegerMix mix, MixGoal goal)
    {
        Mix = mix;
        Goal = goal;
        Everything = !goal.Coverage && goal.Target >= mix.Weight.Sum();
        _hours = [.. mix.Hours.Select(h => (double)Math.Max(0, h))];
        double Running(long r, int at) => mix.Hours[at] < 0 ? double.PositiveInfinity : goal.Coverage ? 0 : r;
        _running = [.. mix.Running.Select(Running)];
        _gain = [.. mix.Weight.Select(w => goal.Coverage ? (double)w : 0)];
        JobValue = new double[mix.Jobs];
        KindOfJob = new int[mix.Jobs];
        ProjectValue = new double[mix.Projects];
        HoursUsed = new double[mix.Kinds];
        Price = new double[mix.Kinds];
    }

    public IntegerMix Mix { get; }

    public MixGoal Goal { get; }

    /// <summary>Every project must be covered: weight then needs no price.</summary>
    public bool Everything { get; }

    /// <summary>λ, per hour unit of each kind.</summary>
    public double[] Price { get; }

    /// <summary>μ, per unit of weight.</summary>
    public double WeightPrice { get; set; }

    /// <summary>v: the cheapest a job is made for on the open kinds.</summary>
    public double[] JobValue { get; }

    public int[] KindOfJob { get; }

    public double[] ProjectValue { get; }

    /// <summary>Hours per kind if every worthwhile project takes its cheapest kinds.</summary>
    public double[] HoursUsed { get; }

    /// <summary>Weight of the worthwhile projects.</summary>
    public double WeightCovered { get; private set; }

    /// <summary>Cost of a job on a kind at these prices.</summary>
    public double Cost(int job, int kind) =>
        _running[job * Mix.Kinds + kind] + Price[kind] * _hours[job * Mix.Kinds + kind];

    /// <summary>Cost at a place of the tables, with this price of its kind's hours.</summary>
    public double Cost(int at, double price) => _running[at] + price * _hours[at];

    /// <summary>What covering a project is worth at these prices.</summary>
    public double Worth(int project) =>
        Everything ? double.PositiveInfinity : _gain[project] + WeightPrice * Mix.Weight[project];

    /// <summary>The bound's part that no count changes; fills the members above.</summary>
    public double Evaluate(int[] open)
    {
        Array.Clear(HoursUsed);
        WeightCovered = 0;
        double value = Everything ? 0 : WeightPrice * Goal.Target;
        for (int p = 0; p < Mix.Projects; p++)
        {
            double sum = 0;
            for (int j = Mix.FirstJob[p]; j < Mix.FirstJob[p + 1]; j++) sum += Cheapest(j, open);
            ProjectValue[p] = sum;
            double worth = Worth(p);
            if (!(sum < worth)) continue;
            value += Everything ? sum : sum - worth;
            WeightCovered += Mix.Weight[p];
            for (int j = Mix.FirstJob[p]; j < Mix.FirstJob[p + 1]; j++)
                HoursUsed[KindOfJob[j]] += _hours[j * Mix.Kinds + KindOfJob[j]];
        }
        return value;
    }

    private double Cheapest(int job, int[] open)
    {
        int row = job * Mix.Kinds;
        double best = double.PositiveInfinity;
        int kind = open[0];
        foreach (int k in open)
        {
            double cost = _running[row + k] + Price[k] * _hours[row + k];
            if (cost >= best) continue;
            best = cost;
            kind = k;
        }
        JobValue[job] = best;
        KindOfJob[job] = kind;
        return best;
    }

    /// <summary>The bound as a cut on counts and choices, from the last evaluation.</summary>
    public MixCut Cut(double value, int[] open)
    {
        int[] closed = [.. Enumerable.Range(0, Mix.Kinds).Except(open)];
        var choice = new double[Mix.Kinds];
        for (int p = 0; p < Mix.Projects && closed.Length > 0; p++)
        {
            LowerToWorth(p);
            for (int j = Mix.FirstJob[p]; j < Mix.FirstJob[p + 1]; j++)
            {
                foreach (int k in closed) choice[k] += Math.Max(0, JobValue[j] - Cost(j, k));
            }
        }
        return new(value, [.. Price.Select((price, k) => price * Mix.Capacity[k])], choice);
    }

    /// <summary>What a project's jobs are worth beyond the project's own worth only weakens the cut.</summary>
    private void LowerToWorth(int project)
    {
        double worth = Worth(project);
        if (ProjectValue[project] <= worth) return;
        Span<double> values = JobValue.AsSpan(Mix.FirstJob[project]..Mix.FirstJob[project + 1]);
        double finite = 0;
        int endless = 0;
        foreach (double v in values)
        {
            if (double.IsFinite(v)) finite += v;
            else endless++;
        }
        double factor = finite > worth ? worth / finite : 1;
        double rest = endless == 0 ? 0 : Math.Max(0, worth - finite) / endless;
        foreach (ref double v in values) v = double.IsFinite(v) ? v * factor : rest;
    }
}

/// <summary>Value of the work ≥ Value − Σ PerUnit·n − Σ PerChoice·chosen.</summary>
internal sealed record MixCut(double Value, double[] PerUnit, double[] PerChoice);
