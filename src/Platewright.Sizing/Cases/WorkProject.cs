using System.Collections.Immutable;

namespace Platewright.Sizing.Cases;

/// <summary>Parts that are only useful together, with how often they are made.</summary>
/// <param name="Index">Its place among the projects of the study.</param>
/// <param name="Wanted">Work never tried so far.</param>
/// <param name="PerMonth">How often it is made in a month, 0 or more.</param>
/// <param name="Fits">For each machine how all of it fits.</param>
/// <param name="CanMake">For each machine whether it can make all of it.</param>
/// <param name="Items">What must all be there; empty where the parts could not be read.</param>
public sealed record WorkProject(
    int Index, string Id, string Name, bool Wanted, double PerMonth, ImmutableArray<FitClass> Fits,
    ImmutableArray<bool> CanMake, ImmutableArray<WorkItem> Items);
