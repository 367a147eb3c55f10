namespace Platewright.Sizing.Cases;

/// <summary>What the projects of a study stand for.</summary>
/// <param name="Sample">
/// True where they are a sample of a larger body of work; false where they are all of it, and then no interval speaks of chance.
/// </param>
/// <param name="Population">Projects in that body, where known: it narrows the intervals.</param>
/// <param name="RatesAssumed">True where nothing says how often: then each project is taken as made once a month.</param>
public sealed record WorkStatement(bool Sample, int? Population, bool RatesAssumed);
