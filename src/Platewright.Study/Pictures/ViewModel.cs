using System.Buffers.Binary;
using Platewright.Geometry;
using Platewright.Study.Documents;

namespace Platewright.Study.Pictures;

/// <summary>A part's geometry as the page turns it about: thinned to what the eye needs, in the part's own coordinates.</summary>
public static class ViewModel
{
    /// <summary>More would not leave every point a number of 16 bits.</summary>
    private const int MostTrianglesOfAll = ushort.MaxValue / 3;

    /// <param name="mesh">Any mesh; what is not finite is left out.</param>
    /// <param name="mostTriangles">12 to 21,845.</param>
    public static ModelDocument Of(Mesh mesh, int mostTriangles)
    {
        if (mostTriangles is < 12 or > MostTrianglesOfAll)
            throw new ArgumentOutOfRangeException(nameof(mostTriangles), mostTriangles, "12 to 21,845 triangles can be shown.");
        Mesh thin = MeshThinner.Thin(mesh, mostTriangles);
        Bounds3 box = thin.Vertices.Length == 0 ? default : thin.Bounds;
        double longest = Math.Max(box.Size.X, Math.Max(box.Size.Y, box.Size.Z));
        double step = longest > 0 ? longest / ushort.MaxValue : 1;
        var positions = new List<double>(thin.Vertices.Length * 3);
        foreach (Vec3 v in thin.Vertices)
        {
            Vec3 steps = (v - box.Min) / step;
            positions.AddRange([steps.X, steps.Y, steps.Z]);
        }
        return new ModelDocument(
            [box.Min.X, box.Min.Y, box.Min.Z], step, Pack(positions), Pack([.. thin.Corners.ToArray().Select(c => (double)c)]));
    }

    private static string Pack(List<double> numbers)
    {
        var bytes = new byte[numbers.Count * sizeof(ushort)];
        for (int i = 0; i < numbers.Count; i++)
        {
            var whole = (ushort)Math.Clamp(Math.Round(numbers[i]), 0, ushort.MaxValue);
            BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(i * sizeof(ushort)), whole);
        }
        return Convert.ToBase64String(bytes);
    }
}
