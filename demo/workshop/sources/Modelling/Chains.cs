namespace Platewright.Demo.Modelling;

/// <summary>Joins directed edges, end to start, into closed rings of vertices.</summary>
internal static class Chains
{
    /// <exception cref="ArgumentException">
    /// The edges do not close: a vertex is left more or less often than entered.
    /// </exception>
    public static List<int[]> Close(IEnumerable<(int From, int To)> edges)
    {
        Dictionary<int, Queue<int>> next = [];
        foreach ((int from, int to) in edges.Order())
        {
            if (!next.TryGetValue(from, out Queue<int>? ends)) next[from] = ends = new();
            ends.Enqueue(to);
        }
        List<int[]> rings = [];
        foreach (int start in next.Keys.Order())
            while (next[start].Count > 0) rings.Add(Follow(next, start));
        return rings;
    }

    private static int[] Follow(Dictionary<int, Queue<int>> next, int start)
    {
        List<int> ring = [];
        int at = start;
        do
        {
            ring.Add(at);
            if (!next.TryGetValue(at, out Queue<int>? ends) || !ends.TryDequeue(out at))
                throw new ArgumentException($"The edges stop at vertex {at}.", nameof(next));
        }
        while (at != start);
        return [.. ring];
    }
}
