namespace Platewright.Geometry;

/// <summary>
/// How the triangles of a welded mesh hang together by their edges. Half-edge 3·t + e runs from corner e of triangle t
/// to the next. Triangles that use a vertex twice have no sides and take no part.
/// </summary>
public sealed class MeshTopology
{
    /// <summary>An edge that one triangle uses.</summary>
    public const int OpenEdge = -1;

    /// <summary>An edge that two triangles use in the same direction: they face opposite ways.</summary>
    public const int TwistedEdge = -2;

    /// <summary>An edge that more than two triangles use.</summary>
    public const int CrowdedEdge = -3;

    /// <summary>A half-edge of a triangle that uses a vertex twice.</summary>
    public const int NoEdge = -4;

    private readonly int[] _mates;
    private readonly int[] _shells;

    internal MeshTopology(EdgeMatching edges, int[] shells, int shellCount)
    {
        _mates = edges.Mates;
        _shells = shells;
        ShellCount = shellCount;
        EdgeCount = edges.Edges;
        OpenEdges = edges.Open;
        TwistedEdges = edges.Twisted;
        CrowdedEdges = edges.Crowded;
        UnbalancedEdges = edges.Unbalanced;
        CollapsedTriangles = edges.Collapsed;
        TwistedPairs = edges.TwistedPairs;
    }

    /// <summary>For each half-edge the one that runs the other way, where the edge has just these two; else one of the
    /// negative marks.</summary>
    public ReadOnlySpan<int> Mates => _mates;

    /// <summary>For each triangle the number of its shell: shells are connected over edges and numbered in order of
    /// their first triangle. A triangle that uses a vertex twice belongs to none: −1.</summary>
    public ReadOnlySpan<int> Shells => _shells;

    public int ShellCount { get; }

    public int EdgeCount { get; }

    public int OpenEdges { get; }

    public int TwistedEdges { get; }

    public int CrowdedEdges { get; }

    /// <summary>Edges that are not used as often one way as the other.</summary>
    public int UnbalancedEdges { get; }

    /// <summary>Triangles that use a vertex twice.</summary>
    public int CollapsedTriangles { get; }

    /// <summary>Every edge is used once in each direction, and there is one.</summary>
    public bool IsClosed => EdgeCount > 0 && OpenEdges + TwistedEdges + CrowdedEdges == 0;

    /// <summary>Every edge is used as often in one direction as in the other, and there is one: weaker than closed (two
    /// cubes that share an edge), and enough for a volume that does not depend on where the origin is.</summary>
    public bool IsBalanced => EdgeCount > 0 && UnbalancedEdges == 0;

    /// <summary>Pairs of triangles that share a twisted edge.</summary>
    internal IReadOnlyList<(int, int)> TwistedPairs { get; }

    /// <summary>The topology of a mesh whose vertices are distinct (<see cref="Welding.Weld"/>).</summary>
    public static MeshTopology Of(Mesh welded)
    {
        EdgeMatching edges = EdgeMatching.Of(welded);
        int[] shells = ShellLabels.Of(welded, edges, out int count);
        return new MeshTopology(edges, shells, count);
    }
}
