namespace Platewright.Geometry;

/// <summary>
/// Makes positions distinct: vertices with exactly equal coordinates (−0 equals 0) become one, vertices no triangle
/// uses are left out. Nothing moves, so nothing that was apart can be closed by it.
/// </summary>
public static class Welding
{
    private const int MostPartitions = 4;
    private const int SoupTriangle = 6;
    private const int Smallest = 1 << 10;

    /// <summary>The same triangles over distinct vertices, numbered in the order in which the triangles use
    /// them.</summary>
    public static Mesh Weld(Mesh mesh)
    {
        if (mesh.IsWelded) return mesh;
        Vec3[] vertices = mesh.VertexArray;
        int[] first = FirstEqual(vertices);
        var corners = new int[mesh.Corners.Length];
        var number = new int[vertices.Length];
        var distinct = new Vec3[Math.Min(vertices.Length, corners.Length)];
        int count = 0;
        ReadOnlySpan<int> old = mesh.Corners;
        for (int i = 0; i < corners.Length; i++)
        {
            ref int place = ref number[first[old[i]]];
            if (place == 0)
            {
                distinct[count] = vertices[old[i]];
                place = ++count;
            }
            corners[i] = place - 1;
        }
        Array.Resize(ref distinct, count);
        return new Mesh(distinct, corners) { IsWelded = true };
    }

    /// <summary>For each vertex the first vertex with equal coordinates.</summary>
    private static int[] FirstEqual(Vec3[] vertices)
    {
        var hashes = new uint[vertices.Length];
        Chunks.For(vertices.Length, (from, to) =>
        {
            for (int i = from; i < to; i++) hashes[i] = Hash(vertices[i]);
        });
        var first = new int[vertices.Length];
        int partitions = Math.Clamp(Environment.ProcessorCount, 1, MostPartitions);
        if (vertices.Length < Smallest) partitions = 1;
        // Each partition owns a range of hashes and goes through the vertices in order: equal vertices meet in one of
        // them, and the first comes first, whatever the number of partitions.
        Parallel.For(0, partitions, p =>
        {
            uint low = (uint)(((1UL << 32) * (ulong)p + (ulong)partitions - 1) / (ulong)partitions);
            uint span = (uint)(((1UL << 32) * (ulong)(p + 1) + (ulong)partitions - 1) / (ulong)partitions - 1) - low;
            Claim(vertices, hashes, first, low, span);
        });
        return first;
    }

    private static void Claim(Vec3[] vertices, uint[] hashes, int[] first, uint low, uint span)
    {
        int capacity = Smallest;
        while (capacity < vertices.Length / SoupTriangle) capacity *= 2;
        ulong[] slots = new ulong[capacity];
        int used = 0;
        for (int i = 0; i < hashes.Length; i++)
        {
            uint hash = hashes[i];
            if (hash - low > span) continue;
            if (2 * used >= slots.Length) slots = Grown(slots);
            uint mask = (uint)slots.Length - 1;
            ulong tag = (ulong)hash << 32;
            uint place = hash & mask;
            while (true)
            {
                ulong slot = slots[place];
                if (slot == 0)
                {
                    slots[place] = tag | (uint)(i + 1);
                    first[i] = i;
                    used++;
                    break;
                }
                int other = (int)(uint)slot - 1;
                if (slot >> 32 == hash && vertices[other] == vertices[i])
                {
                    first[i] = other;
                    break;
                }
                place = (place + 1) & mask;
            }
        }
    }

    private static ulong[] Grown(ulong[] slots)
    {
        var larger = new ulong[2 * slots.Length];
        uint mask = (uint)larger.Length - 1;
        foreach (ulong slot in slots)
        {
            if (slot == 0) continue;
            uint place = (uint)(slot >> 32) & mask;
            while (larger[place] != 0) place = (place + 1) & mask;
            larger[place] = slot;
        }
        return larger;
    }

    private static uint Hash(Vec3 p)
    {
        // Adding 0 makes −0 into 0.
        ulong x = BitConverter.DoubleToUInt64Bits(p.X + 0.0);
        ulong y = BitConverter.DoubleToUInt64Bits(p.Y + 0.0);
        ulong z = BitConverter.DoubleToUInt64Bits(p.Z + 0.0);
        ulong mixed = (x * 0x9E3779B97F4A7C15) ^ (ulong.RotateLeft(y, 21) * 0xC2B2AE3D27D4EB4F)
            ^ (ulong.RotateLeft(z, 42) * 0x165667B19E3779F9);
        mixed ^= mixed >> 32;
        mixed *= 0xD6E8FEB86659FD93;
        return (uint)(mixed >> 32);
    }
}
