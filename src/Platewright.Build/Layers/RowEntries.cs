namespace Platewright.Build.Layers;

/// <summary>Entries of rows in any order, brought into rows by a counting sort, each row then sorted by x.</summary>
internal sealed class RowEntries
{
    private (int Row, double X, double Value)[] _entries = new (int, double, double)[1024];
    private (double X, double Value)[] _sorted = [];
    private int[] _starts = [];
    private int _count;

    public int First { get; private set; }

    public int End { get; private set; }

    public void Clear()
    {
        _count = 0;
        First = int.MaxValue;
        End = int.MinValue;
    }

    public void Add(int row, double x, double value)
    {
        if (_count == _entries.Length) Array.Resize(ref _entries, 2 * _count);
        _entries[_count++] = (row, x, value);
        if (row < First) First = row;
        if (row >= End) End = row + 1;
    }

    public bool IsEmpty => _count == 0;

    public void Sort()
    {
        int rows = End - First;
        if (_starts.Length < rows + 1) _starts = new int[Math.Max(rows + 1, 2 * _starts.Length)];
        Array.Clear(_starts, 0, rows + 1);
        if (_sorted.Length < _count) _sorted = new (double, double)[Math.Max(_count, 2 * _sorted.Length)];
        for (int i = 0; i < _count; i++) _starts[_entries[i].Row - First + 1]++;
        for (int r = 1; r <= rows; r++) _starts[r] += _starts[r - 1];
        for (int i = 0; i < _count; i++)
        {
            (int row, double x, double value) = _entries[i];
            _sorted[_starts[row - First]++] = (x, value);
        }
        for (int r = rows; r > 0; r--) _starts[r] = _starts[r - 1];
        _starts[0] = 0;
        for (int r = 0; r < rows; r++) SortRow(_sorted.AsSpan(_starts[r], _starts[r + 1] - _starts[r]));
    }

    public ReadOnlySpan<(double X, double Value)> this[int row]
    {
        get
        {
            int i = row - First;
            return i >= 0 && row < End ? _sorted.AsSpan(_starts[i], _starts[i + 1] - _starts[i]) : [];
        }
    }

    private static void SortRow(Span<(double X, double Value)> row)
    {
        if (row.Length > 32)
        {
            row.Sort(static (a, b) => a.X.CompareTo(b.X));
            return;
        }
        for (int i = 1; i < row.Length; i++)
        {
            (double X, double Value) entry = row[i];
            int j = i - 1;
            for (; j >= 0 && row[j].X > entry.X; j--) row[j + 1] = row[j];
            row[j + 1] = entry;
        }
    }
}
