namespace Platewright.Geometry;

/// <summary>
/// Splits a range over the cores into pieces of one size, so that sums of pieces are the same at any number of threads.
/// The pieces must write only to their own places.
/// </summary>
internal static class Chunks
{
    private const int Size = 1 << 14;

    /// <summary>How many pieces 0 … count is split into.</summary>
    public static int Count(int count) => (count + Size - 1) / Size;

    /// <summary>The number of the piece that begins at <paramref name="from"/>.</summary>
    public static int Piece(int from) => from / Size;

    /// <summary>Calls <paramref name="work"/> with half-open ranges that cover 0 … count.</summary>
    public static void For(int count, Action<int, int> work)
    {
        if (count <= Size)
        {
            if (count > 0) work(0, count);
            return;
        }
        Parallel.For(0, Count(count), i => work(i * Size, Math.Min(count, (i + 1) * Size)));
    }
}
