using System.Collections.Immutable;

namespace Platewright.Machines;

/// <summary>A machine of which a person stated a little and typical values gave the rest.</summary>
/// <param name="Machine">The machine, with a range for each value that was not stated.</param>
/// <param name="Origins">Where each value came from, by its key in the file.</param>
/// <param name="Notes">What the person should know or check.</param>
public sealed record FilledMachine(
    Machine Machine, ImmutableSortedDictionary<string, string> Origins, ImmutableArray<string> Notes);
