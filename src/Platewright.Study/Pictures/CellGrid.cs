using Platewright.Geometry;

namespace Platewright.Study.Pictures;

/// <summary>Which cell each vertex lies in; cells are numbered as they are met, so the same mesh gives the same numbers.</summary>
internal sealed class CellGrid
{
    private CellGrid(int[] cellOf, int cells, double cellEdgeMm)
    {
        CellOf = cellOf;
        Cells = cells;
        CellEdgeMm = cellEdgeMm;
    }

    public int[] CellOf { get; }

    public int Cells { get; }

    /// <summary>0 where every cell is a single place.</summary>
    public double CellEdgeMm { get; }

    /// <summary>Cubes, so many along the longest side of the mesh.</summary>
    public static CellGrid Over(Mesh mesh, int cellsAlong)
    {
        Bounds3 box = mesh.Bounds;
        double edge = Math.Max(box.Size.X, Math.Max(box.Size.Y, box.Size.Z)) / cellsAlong;
        if (!(edge > 0)) return Exact(mesh);
        int Along(double from, double to) => (int)Math.Clamp(Math.Floor((to - from) / edge), 0, cellsAlong - 1);
        return Number(mesh, edge, p => (Along(box.Min.X, p.X), Along(box.Min.Y, p.Y), Along(box.Min.Z, p.Z)));
    }

    /// <summary>Only vertices at the very same place share a cell.</summary>
    public static CellGrid Exact(Mesh mesh) => Number(mesh, 0, p => p);

    private static CellGrid Number<TKey>(Mesh mesh, double edge, Func<Vec3, TKey> keyOf)
        where TKey : struct
    {
        var numbers = new Dictionary<TKey, int>();
        var cellOf = new int[mesh.Vertices.Length];
        for (int i = 0; i < cellOf.Length; i++)
        {
            TKey key = keyOf(mesh.Vertices[i]);
            if (!numbers.TryGetValue(key, out int number)) numbers.Add(key, number = numbers.Count);
            cellOf[i] = number;
        }
        return new CellGrid(cellOf, numbers.Count, edge);
    }
}
