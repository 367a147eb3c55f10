using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.Stl;

/// <summary>
/// Binary STL straight into a welded mesh: chunks of the file are read and welded side by side, then their distinct
/// positions are welded together. Vertices are in the order of their first use, whatever the number of threads.
/// </summary>
internal static class BinaryStl
{
    public const int CountOffset = 80;
    public const int HeaderBytes = 84;
    public const int FacetBytes = 50;

    /// <summary>
    /// Facets in a chunk: its bytes, table and positions together stay in a core's second-level cache.
    /// </summary>
    private const int ChunkFacets = 8192;

    public static long SizeOf(uint facets) => HeaderBytes + (long)FacetBytes * facets;

    public static Mesh Read(ModelBytes bytes, int facets, double scale, ReadRequest request)
    {
        var corners = new int[3 * facets];
        var chunks = new FloatPosition[(facets + ChunkFacets - 1) / ChunkFacets][];
        var options = new ParallelOptions
        {
            CancellationToken = request.Cancel,
            MaxDegreeOfParallelism = Environment.ProcessorCount,
        };
        ModelFileException? failure = null;
        int failedChunk = int.MaxValue;
        var gate = new Lock();
        Parallel.For(0, chunks.Length, options, () => new ChunkWelder(ChunkFacets), (chunk, _, welder) =>
        {
            int first = chunk * ChunkFacets;
            int count = Math.Min(ChunkFacets, facets - first);
            try
            {
                chunks[chunk] = welder.Weld(bytes, first, corners.AsSpan(3 * first, 3 * count), request);
            }
            catch (ModelFileException e)
            {
                // The first fault in the file is the one to report, whichever thread met its own first.
                lock (gate)
                {
                    if (chunk < failedChunk) (failure, failedChunk) = (e, chunk);
                }
            }
            return welder;
        }, static _ => { });
        if (failure is not null) throw failure;
        request.Cancel.ThrowIfCancellationRequested();
        return Join(chunks, corners, scale, options);
    }

    private static Mesh Join(FloatPosition[][] chunks, int[] corners, double scale, ParallelOptions options)
    {
        var table = new PositionTable(chunks.Sum(c => c.Length));
        var places = new int[chunks.Length][];
        for (int c = 0; c < chunks.Length; c++)
        {
            var place = new int[chunks[c].Length];
            for (int i = 0; i < place.Length; i++) place[i] = table.PlaceOf(chunks[c][i]);
            places[c] = place;
        }
        Parallel.For(0, chunks.Length, options, c =>
        {
            int[] place = places[c];
            int first = 3 * c * ChunkFacets;
            foreach (ref int corner in corners.AsSpan(first, Math.Min(3 * ChunkFacets, corners.Length - first)))
                corner = place[corner];
        });
        var vertices = new Vec3[table.Count];
        ReadOnlySpan<FloatPosition> positions = table.Positions;
        for (int i = 0; i < vertices.Length; i++) vertices[i] = positions[i].ToVec3() * scale;
        return new Mesh(vertices, corners) { IsWelded = true };
    }
}
