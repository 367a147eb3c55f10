namespace Platewright.Build.Layers;

/// <summary>
/// A region of the plane as runs in rows: at each height y = (row + ½)·pitch the stretches of x that are inside. The
/// ends of runs are exact; only y is sampled. Immutable.
/// </summary>
public sealed class Rows
{
    private readonly int[] _starts;
    private readonly double[] _ends;

    /// <param name="pitchMm">Distance between rows, mm.</param>
    /// <param name="first">Number of the first row; row k lies at y = (k + ½)·pitch.</param>
    /// <param name="starts">For each row, and one past the last, the place of its first end.</param>
    /// <param name="ends">Begin and end of each run, mm, rising within a row.</param>
    internal Rows(double pitchMm, int first, int[] starts, double[] ends)
    {
        PitchMm = pitchMm;
        First = first;
        _starts = starts;
        _ends = ends;
    }

    public double PitchMm { get; }

    /// <summary>Number of the first row held.</summary>
    public int First { get; }

    /// <summary>How many rows are held; some may be empty.</summary>
    public int Count => _starts.Length - 1;

    /// <summary>One past the number of the last row.</summary>
    public int End => First + Count;

    public bool IsEmpty => _ends.Length == 0;

    public int RunCount => _ends.Length / 2;

    /// <summary>Length of all runs, mm.</summary>
    public double LengthMm
    {
        get
        {
            double sum = 0;
            for (int i = 0; i < _ends.Length; i += 2) sum += _ends[i + 1] - _ends[i];
            return sum;
        }
    }

    /// <summary>Area by the midpoint rule, mm².</summary>
    public double AreaMm2 => LengthMm * PitchMm;

    /// <summary>Begin and end of each run of a row; empty outside the rows held.</summary>
    public ReadOnlySpan<double> this[int row]
    {
        get
        {
            int i = row - First;
            return (uint)i < (uint)Count ? _ends.AsSpan(_starts[i], _starts[i + 1] - _starts[i]) : [];
        }
    }

    internal ReadOnlySpan<int> Starts => _starts;

    internal ReadOnlySpan<double> Ends => _ends;

    public static Rows Empty(double pitchMm) => new(pitchMm, 0, [0], []);

    /// <summary>The row whose y is nearest.</summary>
    public int RowAt(double y) => (int)Math.Floor(y / PitchMm);

    /// <summary>Height of a row, mm.</summary>
    public double YOf(int row) => (row + 0.5) * PitchMm;

    /// <summary>Whether a point is inside, judged at the row nearest to it.</summary>
    public bool Contains(double x, double y)
    {
        ReadOnlySpan<double> ends = this[RowAt(y)];
        for (int i = 0; i < ends.Length; i += 2)
        {
            if (x < ends[i]) return false;
            if (x <= ends[i + 1]) return true;
        }
        return false;
    }
}
