using System.Runtime.CompilerServices;

namespace Platewright.Build.Motion;

/// <summary>
/// One number for each <see cref="PathKind"/>, held without an allocation. <c>default</c> is all zero.
/// </summary>
public struct PerKind : IEquatable<PerKind>
{
    private const int Kinds = (int)PathKind.Travel + 1;

    private Values _values;

    public double this[PathKind kind]
    {
        readonly get => _values[(int)kind];
        set => _values[(int)kind] = value;
    }

    public readonly double Sum
    {
        get
        {
            double sum = 0;
            for (int i = 0; i < Kinds; i++) sum += _values[i];
            return sum;
        }
    }

    public static PerKind operator +(PerKind a, PerKind b)
    {
        for (int i = 0; i < Kinds; i++) a._values[i] += b._values[i];
        return a;
    }

    public static PerKind operator *(PerKind a, double factor)
    {
        for (int i = 0; i < Kinds; i++) a._values[i] *= factor;
        return a;
    }

    public static bool operator ==(PerKind a, PerKind b) => a.Equals(b);

    public static bool operator !=(PerKind a, PerKind b) => !a.Equals(b);

    public readonly bool Equals(PerKind other) => ((ReadOnlySpan<double>)_values).SequenceEqual(other._values);

    public override readonly bool Equals(object? obj) => obj is PerKind other && Equals(other);

    public override readonly int GetHashCode()
    {
        var hash = new HashCode();
        foreach (double value in _values) hash.Add(value);
        return hash.ToHashCode();
    }

    [InlineArray(Kinds)]
    private struct Values
    {
        private double _first;
    }
}
