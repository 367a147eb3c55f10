using System.Collections.Immutable;

namespace Platewright.Sizing.Cases;

/// <summary>What a project needs as one thing: a part, or alternatives of which one is enough.</summary>
/// <param name="Id">Id of the part, or of the first alternative.</param>
/// <param name="Quantity">Copies in one project, 1 or more.</param>
/// <param name="On">One for each machine; null where it cannot be made.</param>
/// <param name="ReferenceS">
/// The shortest time of any machine, s, for shares of hours that do not depend on the machine judged; null where nothing was
/// estimated at all.
/// </param>
/// <param name="ReferenceG">The least filament of any machine, g; null as the time.</param>
/// <param name="ReferenceReckoned">True where no machine makes it and both are reckoned from its size.</param>
public sealed record WorkItem(
    string Id, string Name, int Quantity, ImmutableArray<Making?> On, double? ReferenceS, double? ReferenceG, bool ReferenceReckoned);
