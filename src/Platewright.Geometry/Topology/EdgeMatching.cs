namespace Platewright.Geometry;

/// <summary>
/// Finds for every half-edge its mate: half-edges are sorted into a bucket for each lower vertex (a counting sort over
/// flat arrays), then each small bucket is sorted by the upper vertex.
/// </summary>
internal sealed class EdgeMatching
{
    private const int MostPartitions = 4;
    private const int Smallest = 1 << 12;
    private const int SmallBucket = 24;

    private EdgeMatching(int halfEdges) => Mates = new int[halfEdges];

    public int[] Mates { get; }

    public int Edges { get; private set; }

    public int Open { get; private set; }

    public int Twisted { get; private set; }

    public int Crowded { get; private set; }

    public int Unbalanced { get; private set; }

    public int Collapsed { get; private set; }

    /// <summary>Pairs of triangles over one twisted or crowded edge.</summary>
    public List<(int, int)> Links { get; } = [];

    public List<(int, int)> TwistedPairs { get; } = [];

    public static EdgeMatching Of(Mesh welded)
    {
        EdgeMatching edges = new(welded.Corners.Length);
        int vertices = welded.Vertices.Length;
        int partitions = Math.Clamp(Environment.ProcessorCount, 1, MostPartitions);
        if (welded.TriangleCount < Smallest) partitions = 1;
        var parts = new Part[partitions];
        Parallel.For(0, partitions, p =>
        {
            int low = (int)((long)vertices * p / partitions), high = (int)((long)vertices * (p + 1) / partitions);
            parts[p] = new Part(welded, edges.Mates, low, high);
            parts[p].Match();
        });
        foreach (Part part in parts)
        {
            edges.Edges += part.Edges;
            edges.Open += part.Open;
            edges.Twisted += part.Twisted;
            edges.Crowded += part.Crowded;
            edges.Unbalanced += part.Unbalanced;
            edges.Links.AddRange(part.Links);
            edges.TwistedPairs.AddRange(part.TwistedPairs);
        }
        edges.Collapsed = parts[0].Collapsed;
        return edges;
    }

    /// <summary>The edges whose lower vertex lies in a range.</summary>
    private sealed class Part(Mesh mesh, int[] mates, int low, int high)
    {
        private int _total;

        public int Edges, Open, Twisted, Crowded, Unbalanced, Collapsed;

        public List<(int, int)> Links { get; } = [];

        public List<(int, int)> TwistedPairs { get; } = [];

        public void Match()
        {
            int[] end = Count();
            ulong[] entries = Fill(end);
            int from = 0;
            for (int v = 0; v < end.Length; v++)
            {
                Span<ulong> bucket = entries.AsSpan(from, end[v] - from);
                Sort(bucket);
                MatchBucket(bucket);
                from = end[v];
            }
        }

        /// <summary>For each lower vertex the place where its bucket begins.</summary>
        private int[] Count()
        {
            ReadOnlySpan<int> corners = mesh.Corners;
            int[] begin = new int[high - low];
            for (int i = 0; i < corners.Length; i += 3)
            {
                int a = corners[i], b = corners[i + 1], c = corners[i + 2];
                if (a == b || b == c || c == a)
                {
                    Collapsed++;
                    continue;
                }
                int ab = Math.Min(a, b) - low, bc = Math.Min(b, c) - low, ca = Math.Min(c, a) - low;
                if ((uint)ab < (uint)begin.Length) begin[ab]++;
                if ((uint)bc < (uint)begin.Length) begin[bc]++;
                if ((uint)ca < (uint)begin.Length) begin[ca]++;
            }
            int sum = 0;
            for (int v = 0; v < begin.Length; v++) (begin[v], sum) = (sum, sum + begin[v]);
            _total = sum;
            return begin;
        }

        /// <summary>Puts every half-edge into its bucket; afterwards <paramref name="place"/> holds the buckets'
        /// ends.</summary>
        private ulong[] Fill(int[] place)
        {
            ReadOnlySpan<int> corners = mesh.Corners;
            var entries = new ulong[_total];
            for (int i = 0; i < corners.Length; i += 3)
            {
                int a = corners[i], b = corners[i + 1], c = corners[i + 2];
                if (a == b || b == c || c == a)
                {
                    if (low == 0) mates[i] = mates[i + 1] = mates[i + 2] = MeshTopology.NoEdge;
                    continue;
                }
                Put(entries, place, a, b, i);
                Put(entries, place, b, c, i + 1);
                Put(entries, place, c, a, i + 2);
            }
            return entries;
        }

        // An entry is the upper vertex, then the half-edge, then whether it runs downwards: all in 64 bits.
        private void Put(ulong[] entries, int[] place, int from, int to, int half)
        {
            bool down = from > to;
            int bucket = (down ? to : from) - low;
            if ((uint)bucket >= (uint)place.Length) return;
            entries[place[bucket]++] = ((ulong)(down ? from : to) << 33) | ((ulong)half << 1) | (down ? 1UL : 0);
        }

        private static void Sort(Span<ulong> bucket)
        {
            if (bucket.Length > SmallBucket)
            {
                bucket.Sort();
                return;
            }
            for (int i = 1; i < bucket.Length; i++)
            {
                ulong entry = bucket[i];
                int j = i - 1;
                for (; j >= 0 && bucket[j] > entry; j--) bucket[j + 1] = bucket[j];
                bucket[j + 1] = entry;
            }
        }

        private void MatchBucket(Span<ulong> bucket)
        {
            for (int i = 0, next; i < bucket.Length; i = next)
            {
                next = i + 1;
                while (next < bucket.Length && bucket[next] >> 33 == bucket[i] >> 33) next++;
                MatchEdge(bucket[i..next]);
            }
        }

        private void MatchEdge(Span<ulong> uses)
        {
            Edges++;
            int down = 0;
            foreach (ulong use in uses) down += (int)(use & 1);
            if (2 * down != uses.Length) Unbalanced++;
            if (uses.Length == 2 && down == 1)
            {
                mates[Half(uses[0])] = Half(uses[1]);
                mates[Half(uses[1])] = Half(uses[0]);
                return;
            }
            int mark = uses.Length == 1 ? MeshTopology.OpenEdge
                : uses.Length == 2 ? MeshTopology.TwistedEdge : MeshTopology.CrowdedEdge;
            if (uses.Length == 1) Open++;
            else if (uses.Length == 2) Twisted++;
            else Crowded++;
            foreach (ulong use in uses) mates[Half(use)] = mark;
            if (uses.Length == 2) TwistedPairs.Add((Half(uses[0]) / 3, Half(uses[1]) / 3));
            for (int i = 1; i < uses.Length; i++) Links.Add((Half(uses[i - 1]) / 3, Half(uses[i]) / 3));
        }

        private static int Half(ulong entry) => (int)((entry >> 1) & uint.MaxValue);
    }
}
