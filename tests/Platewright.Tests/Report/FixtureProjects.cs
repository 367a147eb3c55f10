using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

/// <summary>What follows from the parts: projects, coverage and curves.</summary>
internal static class FixtureProjects
{
    private static readonly string[] Order = ["as_drawn", "turned", "tilted", "scaled", "in_pieces", "no"];

    public static ProjectDocument Of(string name, IReadOnlyList<PartDocument> parts, IReadOnlyList<MachineDocument> machines)
    {
        var groups = parts.GroupBy(p => p.AnyOf ?? p.Id, StringComparer.Ordinal).ToList();
        NeedDocument[] needs = [.. groups.Select(g => g.MinBy(p => p.Need.CubeTurnedMm)!.Need)];
        NeedDocument need = needs.MaxBy(n => n.CubeTurnedMm)! with
        {
            CubeTiltedMm = needs.Max(n => n.CubeTiltedMm ?? n.CubeTurnedMm),
            CubeScaledMm = needs.Max(n => n.CubeScaledMm ?? n.CubeTiltedMm ?? n.CubeTurnedMm),
            ThinnestWallMm = needs.Min(n => n.ThinnestWallMm),
        };
        return new(Slug(name), name, parts.Any(p => p.Wanted), [.. parts.Select(p => p.Id)],
            [.. machines.Select((m, i) => Verdict(m, i, groups))], need);
    }

    public static CoverageDocument Coverage(string machine, IReadOnlyList<ProjectDocument> projects)
    {
        var verdicts = projects.Select(p => p.Verdicts.Single(v => v.Machine == machine)).ToList();
        ShareDocument Share(Func<ProjectVerdictDocument, bool> that) => Wilson(verdicts.Count(that), verdicts.Count);
        return new(verdicts.Count, Share(v => v.CountsAs == "fits"), Share(v => v.CountsAs == "compromise"),
            Share(v => v.CountsAs == "no"), Share(v => v.CanMake),
            [.. verdicts.Where(v => v.DecidedBy is not null).Select(v => v.DecidedBy!).Distinct(StringComparer.Ordinal).Take(3)]);
    }

    public static List<CurveDocument> Curves(
        IReadOnlyList<ProjectDocument> projects, IReadOnlyList<PartDocument> parts, IReadOnlyList<MachineDocument> machines)
    {
        var curves = new List<CurveDocument> { new("fits", null, [], Steps(projects, parts, _ => true)) };
        foreach (var group in machines.Where(m => m.HeatsTo is not null).GroupBy(m => m.HeatsTo!))
        {
            bool Able(NeedDocument n) => (n.ThinnestWallMm ?? 1) >= 0.45 && (n.Heat is not { } h || (h.NozzleC <= group.Key.NozzleC
                && h.BedC <= group.Key.BedC && h.ChamberC <= group.Key.ChamberC));
            curves.Add(new("can_make", group.Key, [.. group.Select(m => m.Id)], Steps(projects, parts, Able)));
        }
        return curves;
    }

    /// <summary>Wilson's score interval at 95 % (z = 1.96), as in Wilson 1927.</summary>
    public static ShareDocument Wilson(int count, int total)
    {
        const double Z = 1.959964;
        double p = (double)count / total, z2 = Z * Z / total;
        double middle = (p + z2 / 2) / (1 + z2), half = Math.Sqrt(p * (1 - p) * z2 + z2 * z2 / 4) / (1 + z2);
        return new(count, p, Math.Max(0, middle - half), Math.Min(1, middle + half));
    }

    private static List<CurveStepDocument> Steps(
        IReadOnlyList<ProjectDocument> projects, IReadOnlyList<PartDocument> parts, Func<NeedDocument, bool> able)
    {
        double[] Edges(Func<NeedDocument, double> edge) => [.. projects.Select(p => parts.Where(q => p.Parts.Contains(q.Id))
            .GroupBy(q => q.AnyOf ?? q.Id, StringComparer.Ordinal)
            .Max(g => g.Where(q => able(q.Need)).Select(q => edge(q.Need)).DefaultIfEmpty(double.PositiveInfinity).Min()))];
        double[] fits = Edges(n => n.CubeTurnedMm);
        double[] all = Edges(n =>
            Math.Min(n.CubeTurnedMm, Math.Min(n.CubeTiltedMm ?? n.CubeTurnedMm, n.CubeScaledMm ?? n.CubeTurnedMm)));
        return [.. fits.Concat(all).Append(0).Where(double.IsFinite).Distinct().Order().Select(e => new CurveStepDocument(
            e, Wilson(fits.Count(n => n <= e), projects.Count), Wilson(all.Count(n => n <= e), projects.Count)))];
    }

    private static ProjectVerdictDocument Verdict(
        MachineDocument machine, int index, IReadOnlyList<IGrouping<string, PartDocument>> groups)
    {
        var best = groups.Select(g => g.MinBy(p => (!p.Fits[index].CanMake, Rank(p, index), p.Need.CubeTurnedMm))!).ToList();
        PartDocument worst = best.MaxBy(p => (Rank(p, index), p.Need.CubeTurnedMm))!;
        PartFitDocument fit = worst.Fits[index];
        PartDocument? cannot = best.FirstOrDefault(p => !p.Fits[index].CanMake);
        return new(machine.Id, fit.Verdict, fit.CountsAs, cannot is null, best.Any(p => p.Fits[index].Tight),
            fit.Verdict == "as_drawn" ? cannot?.Id : worst.Id, $"{worst.Name}: {fit.Reasons[0]}");
    }

    private static int Rank(PartDocument part, int machine) => Array.IndexOf(Order, part.Fits[machine].Verdict);

    private static string Slug(string name) => name.ToLowerInvariant().Replace(' ', '-');
}
