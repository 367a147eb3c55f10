namespace Platewright.Geometry;

/// <summary>Splits a range over the cores. The pieces must write only to their own places: then the answer is the same
/// at any number of threads.</summary>
internal static class Chunks
{
    private const int Size = 1 << 14;

    /// <summary>Calls <paramref name="work"/> with half-open ranges that cover 0 … count.</summary>
    public static void For(int count, Action<int, int> work)
    {
        if (count <= Size)
        {
            if (count > 0) work(0, count);
            return;
        }
        int pieces = (count + Size - 1) / Size;
        Parallel.For(0, pieces, i => work(i * Size, Math.Min(count, (i + 1) * Size)));
    }
}
