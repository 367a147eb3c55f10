namespace Platewright.Sizing.Mixing;

/// <summary>Hours from start to one in hand, per job and kind, and their mean for a mix.</summary>
internal sealed class TurnRounds
{
    private readonly IntegerMix _mix;
    private readonly double[] _hours;

    public TurnRounds(MixProblem problem, IntegerMix mix)
    {
        _mix = mix;
        _hours = [.. problem.Projects.SelectMany(p => p.Jobs).SelectMany(j => j.On).Select(Hours)];
    }

    public double Mean(int[] counts, int[] kindOfJob)
    {
        int[] chosen = [.. Enumerable.Range(0, counts.Length).Where(k => counts[k] > 0)];
        double sum = 0, weights = 0;
        for (int p = 0; p < _mix.Projects; p++)
        {
            int from = _mix.FirstJob[p], to = _mix.FirstJob[p + 1];
            if (kindOfJob[from] < 0) continue;
            double weight = (double)_mix.Weight[p] / (to - from);
            for (int j = from; j < to; j++)
            {
                double fastest = double.PositiveInfinity;
                foreach (int k in chosen) fastest = Math.Min(fastest, _hours[j * _mix.Kinds + k]);
                sum += weight * fastest;
                weights += weight;
            }
        }
        return weights == 0 ? 0 : sum / weights;
    }

    private static double Hours(JobOn? on) => on is not { } made
        ? double.PositiveInfinity
        : made.TurnRoundHours is >= 0 and < double.PositiveInfinity
            ? made.TurnRoundHours
            : throw new ArgumentException(
                $"TurnRoundHours {made.TurnRoundHours}: expected 0 or more, and finite.", nameof(on));
}
