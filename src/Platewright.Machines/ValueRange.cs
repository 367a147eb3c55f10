namespace Platewright.Machines;

/// <summary>Between which bounds a value that nobody measured is believed to lie, 95 times of 100.</summary>
public readonly record struct ValueRange(double Low, double High);
