using System.Collections.Immutable;

namespace Platewright.Sizing;

/// <summary>A part with what it needs.</summary>
/// <param name="Id">Unique in the study.</param>
/// <param name="AnyOf">Its group of alternatives in the project, null where it must be there.</param>
public sealed record SizedPart(string Id, string? AnyOf, PartNeed Need);

/// <summary>Parts that are only useful together.</summary>
/// <param name="Complete">False where a part of it could not be read: no machine can be said to hold it.</param>
public sealed record SizedProject(string Id, ImmutableArray<SizedPart> Parts, bool Complete = true)
{
    /// <summary>What must all be there: each part alone, or alternatives of which one is enough.</summary>
    public IEnumerable<ImmutableArray<SizedPart>> Groups => Parts
        .GroupBy(p => (Group: p.AnyOf, Alone: p.AnyOf is null ? p.Id : null))
        .Select(g => g.ToImmutableArray());
}
