namespace Platewright.Build.Motion;

/// <summary>Where the least of a range of numbers is, in logarithmic time: a tree of minima over the numbers.</summary>
internal sealed class RangeMinimum
{
    private double[] _tree = [];
    private int _leaves;

    public void Build(ReadOnlySpan<double> values)
    {
        _leaves = 1;
        while (_leaves < values.Length) _leaves *= 2;
        if (_tree.Length < 2 * _leaves) _tree = new double[2 * _leaves];
        values.CopyTo(_tree.AsSpan(_leaves));
        _tree.AsSpan(_leaves + values.Length, _leaves - values.Length).Fill(double.PositiveInfinity);
        for (int node = _leaves - 1; node > 0; node--) _tree[node] = Math.Min(_tree[2 * node], _tree[2 * node + 1]);
    }

    /// <summary>Index of the least value of [first, end), the leftmost of equals; -1 for an empty range.</summary>
    public int IndexOfLeast(int first, int end)
    {
        int best = 0, right = 0;
        for (int low = first + _leaves, high = end + _leaves; low < high; low /= 2, high /= 2)
        {
            if (low % 2 == 1)
            {
                if (best == 0 || _tree[low] < _tree[best]) best = low;
                low++;
            }
            if (high % 2 == 1)
            {
                high--;
                // Nodes from the right come in falling order: the later one lies further left.
                if (right == 0 || _tree[high] <= _tree[right]) right = high;
            }
        }
        if (right != 0 && (best == 0 || _tree[right] < _tree[best])) best = right;
        if (best == 0) return -1;
        while (best < _leaves) best = _tree[2 * best] <= _tree[2 * best + 1] ? 2 * best : 2 * best + 1;
        return best - _leaves;
    }

    public double Least(int first, int end)
    {
        int index = IndexOfLeast(first, end);
        return index < 0 ? double.PositiveInfinity : _tree[_leaves + index];
    }
}
