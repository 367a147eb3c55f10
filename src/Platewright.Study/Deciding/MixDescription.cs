using System.Collections.Immutable;
using System.Globalization;
using Platewright.Sizing.Answers;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Mixing;
using Platewright.Sizing.Money;
using Platewright.Study.Documents;

namespace Platewright.Study.Deciding;

/// <summary>The mix, the front and what changes the answer, as the documents show them.</summary>
internal sealed class MixDescription(SizingAnswer answer, MixAnswered mixed)
{
    private const int MonthsPerYear = 12;

    private SizingCase Case => answer.Case;

    private MixAsked Asked => mixed.Asked;

    public MixDocument Mix()
    {
        MixAnswer a = mixed.Answer;
        if (a.Mix is not { } mix) return NoRoom(a);
        WorkProject[] left =
        [
            .. Case.Projects.Where(p => !Asked.Projects.Contains(p.Index)),
            .. Asked.Projects.Where((_, i) => mix.KindOfJob[i].Contains(-1)).Select(i => Case.Projects[i]),
        ];
        decimal running = mix.RunningCost + OwnedTuning(mix);
        return new MixDocument(
            a.Status switch
            {
                MixStatus.Optimal => "optimal",
                MixStatus.Within => "within",
                MixStatus.Unreachable => "unreachable",
                _ => "undecided",
            },
            a.RelativeGap, Loaded(mix), Case.Aim.CoverShare, mix.CoveredShare, a.ReachBound,
            Blocking(a),
            mix.MonthlyCost, mix.MachineCost, mix.RunningCost, mix.Price, mix.Price + MonthsPerYear * running, mix.FloorM2, mix.PeakW,
            [.. left.OrderByDescending(p => p.PerMonth).ThenBy(p => p.Index).Select(p => p.Name)],
            Excluded());
    }

    /// <summary>The machines that are there break a limit by themselves: there is no mix, and that is the answer.</summary>
    private MixDocument NoRoom(MixAnswer a) => new(
        "no_room", 0, [], Case.Aim.CoverShare, 0, a.ReachBound, Blocking(a), 0, 0, 0, 0, 0, 0, 0,
        [.. Case.Projects.Select(p => p.Name)], Excluded());

    private static IReadOnlyList<string> Blocking(MixAnswer a) =>
    [
        .. a.Blocking.Select(b => b switch
        {
            MixLimit.Budget => "budget",
            MixLimit.Floor => "floor",
            MixLimit.Power => "power",
            MixLimit.Machines => "machines",
            _ => "counts",
        }),
    ];

    private IReadOnlyList<string> Excluded() =>
        [.. Asked.Excluded.Select(e => $"{Case.Machines[e.Machine].Name}: {e.Reason}.")];

    public IReadOnlyList<FrontPointDocument> Front() =>
    [
        .. mixed.Front.Mixes.Select(f => new FrontPointDocument(
            Machines(f.Counts, null), f.CoveredShare, f.MonthlyCost, f.TurnRoundHours, f.FloorM2, f.PeakW,
            f.Cheapest is MixStatus.Optimal or MixStatus.Within ? f.CoveredShare : null)),
    ];

    public IReadOnlyList<SensitivityDocument> Sensitivities()
    {
        if (mixed.Answer.Mix is not { } recommended) return [];
        Dictionary<string, AssumptionDocument> known = Assumptions.Of(Case.Costs).ToDictionary(a => a.Key, StringComparer.Ordinal);
        string now = Said(recommended.Counts);
        return
        [
            .. mixed.Sensitivities.Select(s => new SensitivityDocument(
                s.Key, known.TryGetValue(s.Key, out AssumptionDocument? a) ? a.What : Others[s.Key], s.Value, s.Low, s.High, now,
                Said(s.LowCounts), Said(s.HighCounts), s.LowPerMonth, s.HighPerMonth, s.Changes)),
        ];
    }

    private static readonly Dictionary<string, string> Others = new(StringComparer.Ordinal)
    {
        ["times"] = "machine times, all off in the same way",
        ["work.projects_per_month"] = "amount of work, half and double",
        ["wanted"] = "wanted projects left out or counted",
    };

    /// <summary>Of the owned machines somebody's time to tune them is running cost, of the others a part of owning.</summary>
    private decimal OwnedTuning(MachineMix mix) =>
        mix.Counts.Select((n, k) => Asked.KindOwned[k] ? n * Asked.Problem.Kinds[k].CostPerMonth : 0).Sum();

    /// <summary>Bought and owned ones of a machine together, in the order of the study.</summary>
    private IReadOnlyList<MixMachineDocument> Machines(ImmutableArray<int> counts, ImmutableArray<double>? hours) =>
    [
        .. Enumerable.Range(0, counts.Length).Where(k => counts[k] > 0).GroupBy(k => Asked.KindMachine[k]).OrderBy(g => g.Key)
            .Select(g => new MixMachineDocument(
                Case.Machines[g.Key].Id, Case.Machines[g.Key].Name, g.Sum(k => counts[k]), g.Where(k => Asked.KindOwned[k]).Sum(k => counts[k]),
                hours is { } used ? g.Sum(k => used[k]) : 0, answer.Work[g.Key].HoursOfOne, Case.Machines[g.Key].Price)),
    ];

    private IReadOnlyList<MixMachineDocument> Loaded(MachineMix mix)
    {
        Load[] loads = [.. Case.Machines.Select(_ => Load.None)];
        for (int i = 0; i < Asked.Projects.Length; i++)
        {
            WorkProject project = Case.Projects[Asked.Projects[i]];
            for (int j = 0; j < project.Items.Length; j++)
            {
                if (mix.KindOfJob[i][j] is not (>= 0 and { } kind)) continue;
                int machine = Asked.KindMachine[kind];
                loads[machine] += project.Items[j].Quantity * project.PerMonth * Loads.Of(project.Items[j].On[machine]!)!.Value;
            }
        }
        return
        [
            .. Machines(mix.Counts, mix.HoursUsed).Select(m => m with
            {
                Load = SizingDescription.Of(loads[Case.Machines.ToList().FindIndex(x => x.Id == m.Machine)]),
            }),
        ];
    }

    private string Said(ImmutableArray<int>? counts) => counts is { } known
        ? string.Join(" and ", Machines(known, null).Select(m => string.Create(CultureInfo.InvariantCulture, $"{m.Count} × {m.Name}")))
        : "none of the mixes on the front";
}
