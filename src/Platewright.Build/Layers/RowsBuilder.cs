namespace Platewright.Build.Layers;

/// <summary>Collects runs row by row, in rising order.</summary>
internal sealed class RowsBuilder
{
    /// <summary>Shorter runs are rounding between edges that touch, mm.</summary>
    private const double ShortestRunMm = 1e-6;

    private readonly List<int> _starts = [];
    private double[] _ends = new double[256];
    private double _pitch;
    private int _first;
    private int _count;

    public void Begin(double pitchMm, int first)
    {
        _pitch = pitchMm;
        _first = first;
        _count = 0;
        _starts.Clear();
    }

    public void BeginRow() => _starts.Add(_count);

    public void Add(double from, double to)
    {
        if (to - from < ShortestRunMm) return;
        if (_count + 2 > _ends.Length) Array.Resize(ref _ends, 2 * _ends.Length);
        _ends[_count++] = from;
        _ends[_count++] = to;
    }

    /// <summary>The region, without empty rows at its ends.</summary>
    public Rows Build()
    {
        if (_count == 0) return Rows.Empty(_pitch);
        _starts.Add(_count);
        int low = 0, high = _starts.Count - 1;
        while (_starts[low + 1] == 0) low++;
        while (_starts[high - 1] == _count) high--;
        var starts = new int[high - low + 1];
        _starts.CopyTo(low, starts, 0, starts.Length);
        return new Rows(_pitch, _first + low, starts, _ends[.._count]);
    }
}
