using Platewright.Fit;
using Platewright.Geometry;

namespace Platewright.Tests.Fit;

/// <summary>
/// The published table of largest regular polyhedra in a cube: Croft, Proc. London Math. Soc. (3) 41 (1980) 279–296; the
/// dodecahedron by Firsching, arXiv:1407.0683 (root of x⁴ + 14x³ + 37x² + 6x − 9). Largest square: Nieuwland, 3√2/4.
/// </summary>
public sealed class PolyhedraTests
{
    // Edge of the largest copy in a cube of edge 1.
    public static TheoryData<string, Vec3[], double> Table() => new()
    {
        { "tetrahedron", Solids.Tetrahedron(), Math.Sqrt(2) },
        { "cube", Solids.Box(1, 1, 1), 1 },
        { "octahedron", Solids.Octahedron(), 3 * Math.Sqrt(2) / 4 },
        { "dodecahedron", Solids.Dodecahedron(), 0.394283479725137452 },
        { "icosahedron", Solids.Icosahedron(), (Math.Sqrt(5) - 1) / 2 },
        { "cuboctahedron", Solids.Cuboctahedron(), Math.Sqrt(2) / 2 },
        { "square, flat", Solids.Box(1, 1, 0), 3 * Math.Sqrt(2) / 4 },
        { "needle", [default, Vec3.UnitX], Math.Sqrt(3) },
    };

    [Theory]
    [MemberData(nameof(Table), DisableDiscoveryEnumeration = true)]
    public void LargestInCube_Table_IsReached(string name, Vec3[] solid, double edge)
    {
        var part = new PreparedPart(new PartShape(ConvexHull.Of(solid)));
        FitResult fit = FitSolver.Solve(
            part, Solids.BoxMachine(1, 1, 1), new Allowance(), new FitOptions(1e-8), CancellationToken.None);
        Assert.True(Math.Abs(fit.Tilted.LargestScale / edge - 1) < 1e-9, $"{name}: {fit.Tilted.LargestScale} for {edge}");
        Assert.InRange(fit.UpperBound, edge * (1 - 1e-12), edge * (1 + 1.01e-8));
    }
}
