using System.Buffers.Binary;
using Platewright.Geometry;
using Platewright.Study.Documents;
using Platewright.Study.Pictures;

namespace Platewright.Tests.Report;

public sealed class ViewModelTests
{
    [Fact]
    public void Of_SmallMesh_KeepsEveryTriangle()
    {
        Mesh cube = FixtureShapes.Make("box", new(20, 30, 40));
        ModelDocument model = ViewModel.Of(cube, 100);

        Assert.Equal(cube.TriangleCount, Corners(model).Length / 3);
        Bounds3 shown = Bounds3.Of(Positions(model));
        Assert.Equal(0, (shown.Min - cube.Bounds.Min).Length, 1e-9);
        Assert.Equal(0, (shown.Max - cube.Bounds.Max).Length, model.StepMm);
    }

    [Theory]
    [InlineData(3000)]
    [InlineData(300)]
    public void Of_LargeMesh_StaysBelowTheLimitAndInShape(int most)
    {
        Mesh fine = Divide(FixtureShapes.Make("bracket", new(100, 100, 20)), 5);
        ModelDocument model = ViewModel.Of(fine, most);
        Bounds3 thin = Bounds3.Of(Positions(model));

        Assert.InRange(Corners(model).Length / 3, most / 8, most);
        // Planes meet in the corners, so the quadrics put them back where they were.
        Assert.Equal(0, (thin.Min - fine.Bounds.Min).Length, 0.5);
        Assert.Equal(0, (thin.Max - fine.Bounds.Max).Length, 0.5);
    }

    [Fact]
    public void Of_MeshWithInfiniteCorner_LeavesItsTriangleOut()
    {
        Mesh mesh = new([new(0, 0, 0), new(1, 0, 0), new(0, 1, 0), new(double.PositiveInfinity, 0, 0)], [0, 1, 2, 0, 1, 3]);

        Assert.Equal([0, 1, 2], Corners(ViewModel.Of(mesh, 100)));
    }

    private static int[] Corners(ModelDocument model) => Unpack(model.Corners);

    private static Vec3[] Positions(ModelDocument model)
    {
        Vec3 low = new(model.LowMm[0], model.LowMm[1], model.LowMm[2]);
        return [.. Unpack(model.Positions).Chunk(3).Select(p => low + model.StepMm * new Vec3(p[0], p[1], p[2]))];
    }

    private static int[] Unpack(string numbers)
    {
        byte[] bytes = Convert.FromBase64String(numbers);
        return [.. Enumerable.Range(0, bytes.Length / 2).Select(i => (int)BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(2 * i)))];
    }

    /// <summary>The same shape with each triangle cut in four, again and again.</summary>
    private static Mesh Divide(Mesh mesh, int times)
    {
        for (; times > 0; times--)
        {
            var vertices = new List<Vec3>();
            for (int i = 0; i < mesh.TriangleCount; i++)
            {
                (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(i);
                (Vec3 ab, Vec3 bc, Vec3 ca) = ((a + b) / 2, (b + c) / 2, (c + a) / 2);
                vertices.AddRange([a, ab, ca, ab, b, bc, ca, bc, c, ab, bc, ca]);
            }
            mesh = new Mesh([.. vertices], [.. Enumerable.Range(0, vertices.Count)]);
        }
        return mesh;
    }
}
