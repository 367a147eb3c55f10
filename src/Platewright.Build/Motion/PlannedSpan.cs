namespace Platewright.Build.Motion;

/// <summary>
/// A stretch of path that one double-S profile covers: the moves from one index up to, not including, another.
/// </summary>
internal readonly record struct PlannedSpan(int First, int End, DoubleS Profile);
