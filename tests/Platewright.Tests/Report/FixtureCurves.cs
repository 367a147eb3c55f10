using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

/// <summary>Invented hours and money for the fixture's projects, their curves against size, and everything against price.</summary>
internal static class FixtureCurves
{
    private static readonly string[] Weighted = ["hours", "money"];

    private static readonly string[] Kinds = ["fits", "can_make"];

    public static SizingDocument Added(
        SizingDocument sizing, IReadOnlyList<MachineDocument> machines, IReadOnlyList<ProjectDocument> projects,
        IReadOnlyList<CurveDocument> curves)
    {
        ProjectWeightDocument[] weights =
            [.. projects.Select((p, i) => new ProjectWeightDocument(p.Id, 2.5 + 3 * i, i == 1 ? null : 4.2 + 6.1 * i))];
        return sizing with
        {
            Weights = weights,
            Curves = [.. Weighted.SelectMany(measure => curves.Select(c => new MeasuredCurveDocument(
                measure, c.Kind, c.Heat, c.Like, Total(measure, weights), measure == "money" ? 1 : 0,
                [.. c.Steps.Select(s => new MeasuredStepDocument(s.EdgeMm, Of(s.Fits, Total(measure, weights)), Of(s.WithCompromise, Total(measure, weights))))])))],
            PriceCurves = [.. Weighted.Append("projects").SelectMany(m => Kinds.Select(kind => ByPrice(m, kind, machines, projects, weights)))],
        };
    }

    private static double Total(string measure, ProjectWeightDocument[] weights) => measure switch
    {
        "hours" => weights.Sum(w => w.HoursPerMonth ?? 0),
        "money" => weights.Sum(w => w.MoneyPerMonth ?? 0),
        _ => weights.Length,
    };

    // Large projects weigh more, so that a share of hours is below that of projects.
    private static AmountDocument Of(ShareDocument share, double total)
    {
        double value = Math.Pow(share.Share, 1.5);
        return new(value * total, value, Math.Max(0, share.Low - 0.08), Math.Min(1, share.High + 0.02));
    }

    private static PriceCurveDocument ByPrice(
        string measure, string kind, IReadOnlyList<MachineDocument> machines, IReadOnlyList<ProjectDocument> projects,
        ProjectWeightDocument[] weights)
    {
        double total = Total(measure, weights);
        List<PriceStepDocument> steps = [];
        foreach (MachineDocument m in machines.Where(m => m.Price is not null).OrderBy(m => m.Price!.Amount))
        {
            AmountDocument fits = Taken(m, strictly: true), all = Taken(m, strictly: false);
            PriceStepDocument? last = steps.Count > 0 ? steps[^1] : null;
            bool more = last is null || all.Count > last.WithCompromise.Count, moreFits = last is null || fits.Count > last.Fits.Count;
            if (more || moreFits)
                steps.Add(new(m.Price!.Amount, moreFits ? m.Id : last!.FitsMachine, moreFits ? fits : last!.Fits,
                    more ? m.Id : last!.Machine, more ? all : last!.WithCompromise));
        }
        return new(measure, kind, total, measure == "money" ? 1 : 0, steps);

        AmountDocument Taken(MachineDocument m, bool strictly)
        {
            double sum = projects.Select((p, i) => (V: p.Verdicts.Single(v => v.Machine == m.Id), W: weights[i]))
                .Where(x => (kind == "fits" || x.V.CanMake) && (x.V.CountsAs == "fits" || (!strictly && x.V.CountsAs == "compromise")))
                .Sum(x => measure switch { "hours" => x.W.HoursPerMonth ?? 0, "money" => x.W.MoneyPerMonth ?? 0, _ => 1 });
            double share = sum / total;
            return new(sum, share, Math.Max(0, share - 0.2), Math.Min(1, share + 0.15));
        }
    }
}
