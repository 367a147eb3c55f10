namespace Platewright.Geometry;

/// <summary>Something about a mesh that its owner should know.</summary>
/// <param name="Code">A stable snake_case word for scripts; all of them are in <see cref="FindingCodes"/>.</param>
/// <param name="Count">How many of it, at least 1.</param>
/// <param name="Message">What it is and what it means for printing, in a sentence or two.</param>
public sealed record Finding(string Code, int Count, string Message);
