using System.Collections.Immutable;

namespace Platewright.Sizing;

/// <summary>A part that a larger machine would win.</summary>
/// <param name="NeedMm">Edge from which on it is made, mm.</param>
/// <param name="MissMm">How much that is above the edge asked about, mm, greater than 0.</param>
/// <param name="CompletesProject">True when its project is made from that edge on.</param>
public sealed record NextPart(string Part, string Project, double NeedMm, double MissMm, bool CompletesProject)
{
    /// <summary>The next parts won, nearest first. Of alternatives only the one that comes first is named.</summary>
    /// <param name="projects">The sample.</param>
    /// <param name="machine">What is asked; parts that no size wins are left out.</param>
    /// <param name="edgeMm">Edge of the machine at hand, mm.</param>
    /// <param name="withCompromise">Whether tilted and scaled parts count as made.</param>
    /// <param name="atMost">Length of the list, 0 or more.</param>
    public static ImmutableArray<NextPart> Of(
        IEnumerable<SizedProject> projects, ImaginedMachine machine, double edgeMm, bool withCompromise, int atMost) =>
    [
        .. projects.Where(p => p.Complete).SelectMany(p => Of(p, machine, edgeMm, withCompromise))
            .OrderBy(n => n.NeedMm).ThenBy(n => n.Part, StringComparer.Ordinal).Take(atMost),
    ];

    private static IEnumerable<NextPart> Of(
        SizedProject project, ImaginedMachine machine, double edgeMm, bool withCompromise)
    {
        double Need(SizedPart part)
        {
            Edges edges = machine.EdgesFor(part.Need);
            return withCompromise ? edges.WithCompromiseMm : edges.FitsMm;
        }

        (SizedPart Part, double Need)[] open =
        [
            .. project.Groups
                .Select(g => g.Select(p => (Part: p, Need: Need(p))).MinBy(p => p.Need))
                .Where(p => p.Need > edgeMm),
        ];
        double all = open.Select(o => o.Need).DefaultIfEmpty().Max();
        return open.Where(o => double.IsFinite(o.Need))
            .Select(o => new NextPart(o.Part.Id, project.Id, o.Need, o.Need - edgeMm, o.Need >= all));
    }
}
