using Platewright.Formats.Xml;
using Platewright.Geometry;

namespace Platewright.Formats.ThreeMf;

/// <summary>
/// The transform attribute: 12 numbers, a 4 × 3 matrix by rows for row vectors (core specification, section 3.3).
/// </summary>
internal static class TransformParser
{
    private const int Numbers = 12;

    /// <summary>The transform of the element the walk stands on; the identity where it states none.</summary>
    public static Affine Parse(XmlWalk walk)
    {
        if (walk.Attribute("transform") is not { } text) return Affine.Identity;
        string[] words = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        if (words.Length != Numbers) throw walk.Refuse($"the transform has {words.Length} numbers, it needs {Numbers}");
        double[] m = Array.ConvertAll(words, w => walk.Number(w));
        var linear = new Matrix3(new Vec3(m[0], m[3], m[6]), new Vec3(m[1], m[4], m[7]), new Vec3(m[2], m[5], m[8]));
        if (linear.Determinant == 0) throw walk.Refuse("the transform flattens the object", "correct its scale");
        return new Affine(linear, new Vec3(m[9], m[10], m[11]));
    }
}
