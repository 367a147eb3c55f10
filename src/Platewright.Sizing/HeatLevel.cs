using System.Collections.Immutable;
using Platewright.Machines;

namespace Platewright.Sizing;

/// <summary>A way of heating among the machines of a study: one curve of what can be made belongs to each.</summary>
/// <param name="Heat">What the machines heat to; null for those that do not say.</param>
/// <param name="Like">Ids of the machines that heat like that, in the order of the study.</param>
public sealed record HeatLevel(HeatLimits? Heat, ImmutableArray<string> Like)
{
    /// <summary>The levels, coolest first; machines that do not say come last.</summary>
    public static ImmutableArray<HeatLevel> Of(IEnumerable<Machine> machines) =>
    [
        .. machines
            .GroupBy(m => m.HeatsTo)
            .OrderBy(g => g.Key is null)
            .ThenBy(g => g.Key?.ChamberC).ThenBy(g => g.Key?.BedC).ThenBy(g => g.Key?.NozzleC)
            .Select(g => new HeatLevel(g.Key, [.. g.Select(m => m.Id)])),
    ];
}
