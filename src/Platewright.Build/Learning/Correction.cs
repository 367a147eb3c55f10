namespace Platewright.Build.Learning;

/// <summary>What past jobs of a machine say about its estimates.</summary>
/// <param name="Factor">Measured over estimated: multiplies an estimate.</param>
/// <param name="Low">Where the next job may lie below the corrected estimate, as a share of it, 95 %: negative.</param>
/// <param name="High">The same above it.</param>
/// <param name="Jobs">How many jobs it rests on.</param>
public sealed record Correction(double Factor, double Low, double High, int Jobs);
