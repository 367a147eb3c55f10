using System.Globalization;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>The answer in one sentence: the smallest machine that makes the most, how much that is, how sure.</summary>
internal static class Headline
{
    public static string Of(JudgedStudy study, IReadOnlyList<MachineDocument> machines)
    {
        int projects = study.Projects.Count;
        if (projects == 0) return "There is nothing to study: no model could be used.";
        MachineDocument best = machines.OrderByDescending(m => m.Coverage.CanMake.Count).ThenBy(m => m.EdgeMm).First();
        ShareDocument share = best.Coverage.CanMake;
        string sample = projects == 1 ? "the one project" : $"{share.Count} of {projects} projects";
        if (share.Count == 0) return $"None of the {machines.Count} machines here can make {(projects == 1 ? sample : $"any of the {projects} projects")}.";
        int index = machines.ToList().IndexOf(best);
        int compromises = study.Projects.Count(p => p.Verdicts[index].CanMake && p.Verdicts[index].Verdict.CountsAs() == "compromise");
        string place = machines.Count == 1 ? $"{best.Name} can make" : $"{best.Name} is the smallest machine that can make the most:";
        string doubt = string.Create(CultureInfo.InvariantCulture,
            $"{100 * share.Share:0} %, {100 * study.Plan.Options.Confidence:0.#} % interval {100 * share.Low:0} to {100 * share.High:0} %");
        string compromise = compromises == 0 ? "" : $", {compromises} of them only with a compromise";
        return $"{Capital(place)} {sample} ({doubt}){compromise}.";
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
