using Platewright.Study.Documents;

namespace Platewright.Study.Describing;

/// <summary>Two studies side by side.</summary>
public static class StudyComparison
{
    public static ComparisonDocument Of(StudyDocument first, StudyDocument second)
    {
        string[] machines = [.. first.Machines.Select(m => m.Name).Union(second.Machines.Select(m => m.Name), StringComparer.Ordinal)];
        Dictionary<string, ProjectDocument> before = ByName(first), after = ByName(second);
        return new ComparisonDocument(
            Side(first), Side(second),
            [.. machines.Select(name => Machine(name, first, second)).OrderBy(m => m.First is null || m.Second is null)],
            [.. before.Where(p => after.ContainsKey(p.Key)).SelectMany(p => Changed(first, p.Value, second, after[p.Key]))],
            [.. before.Keys.Where(n => !after.ContainsKey(n))], [.. after.Keys.Where(n => !before.ContainsKey(n))],
            Assumptions(first, second));
    }

    // Of several projects with one name the first stands for it; study files refuse that, folders cannot make it.
    private static Dictionary<string, ProjectDocument> ByName(StudyDocument study) =>
        study.Projects.DistinctBy(p => p.Name, StringComparer.Ordinal).ToDictionary(p => p.Name, StringComparer.Ordinal);

    private static ComparedStudyDocument Side(StudyDocument study) => new(
        study.Name, study.Headline, study.Projects.Count, study.Parts.Count, study.Sizing?.Sheet is { Recommendation: [{ } said, ..] } ? said.Text : null,
        study.Sizing?.Mix is { Machines.Count: > 0 } mix ? mix.PerMonth : null, study.Sizing?.Currency);

    private static ComparedMachineDocument Machine(string name, StudyDocument first, StudyDocument second)
    {
        MachineDocument? a = first.Machines.FirstOrDefault(m => m.Name == name), b = second.Machines.FirstOrDefault(m => m.Name == name);
        return new ComparedMachineDocument(
            name, a?.Coverage.CanMake, b?.Coverage.CanMake, a?.Coverage.Projects ?? 0, b?.Coverage.Projects ?? 0, a?.Builds?.TimeS, b?.Builds?.TimeS,
            a?.Builds?.EnergyKwh, b?.Builds?.EnergyKwh);
    }

    private static IEnumerable<ChangedVerdictDocument> Changed(StudyDocument first, ProjectDocument a, StudyDocument second, ProjectDocument b)
    {
        foreach (MachineDocument machine in first.Machines)
        {
            if (second.Machines.FirstOrDefault(m => m.Name == machine.Name) is not { } same) continue;
            ProjectVerdictDocument one = a.Verdicts.First(v => v.Machine == machine.Id), other = b.Verdicts.First(v => v.Machine == same.Id);
            if (one.Verdict == other.Verdict && one.CanMake == other.CanMake) continue;
            yield return new ChangedVerdictDocument(a.Name, machine.Name, one.Verdict, one.CanMake, other.Verdict, other.CanMake);
        }
    }

    private static ComparedAssumptionDocument[] Assumptions(StudyDocument first, StudyDocument second)
    {
        IReadOnlyList<AssumptionDocument> one = first.Sizing?.Assumptions ?? [], other = second.Sizing?.Assumptions ?? [];
        return
        [
            .. one.Concat(other).DistinctBy(a => a.Key)
                .Select(a => new ComparedAssumptionDocument(
                    a.Key, a.What, a.Unit, one.FirstOrDefault(x => x.Key == a.Key)?.Value, other.FirstOrDefault(x => x.Key == a.Key)?.Value))
                .Where(a => a.First != a.Second),
        ];
    }
}
