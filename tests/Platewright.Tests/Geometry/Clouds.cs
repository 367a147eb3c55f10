using CsCheck;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

/// <summary>Point sets that break careless hulls.</summary>
internal static class Clouds
{
    private static readonly Gen<double> Wide = Gen.Double[-200, 200];

    private static readonly Gen<Vec3> Anywhere = Gen.Select(Wide, Wide, Wide, (x, y, z) => new Vec3(x, y, z));

    private static readonly Gen<Vec3> OnGrid =
        Gen.Select(Gen.Int[-2, 2], Gen.Int[-2, 2], Gen.Int[-2, 2], (x, y, z) => new Vec3(x, y, z));

    private static readonly Gen<Vec3> FineGrid = Gen.Select(
        Gen.Int[0, 3], Gen.Int[0, 3], Gen.Int[0, 3], (x, y, z) => new Vec3(x * 0.1f, y * 0.1f, z * 0.1f + 1000));

    private static readonly Gen<Vec3> Needle =
        Gen.Select(Wide, Gen.Int[-2, 2], Gen.Int[-2, 2], (x, y, z) => new Vec3(x, x * 0.3 + y * 1e-14, z * 1e-300));

    private static readonly Gen<Vec3> Rounded = Anywhere.Where(p => p.Length > 1).Select(p => p * (100 / p.Length))
        .Select(p => new Vec3((float)p.X, (float)p.Y, (float)p.Z));

    private static readonly Gen<Vec3> Huge = OnGrid.Select(p => p * 3.4028234663852886e38);

    /// <summary>A grid turned by a fixed angle: coplanar but for the last bit.</summary>
    private static readonly Gen<Vec3> Turned =
        OnGrid.Select(p => Rotation.About(new Vec3(1, 2, 3), 0.7).Apply(p) + new Vec3(100, 0, 0));

    private static readonly Gen<Vec3> Sloped = Gen.Select(Wide, Wide, (x, y) => new Vec3(x, y, x + y));

    private static readonly Gen<Vec3> InPlane =
        Gen.Select(Gen.Int[-3, 3], Gen.Int[-3, 3], (x, y) => new Vec3(x, y, x + y));

    private static readonly Gen<Vec3> OnLine = Gen.Int[-9, 9].Select(t => new Vec3(t, 2 * t, -t));

    /// <summary>Axes to turn about.</summary>
    public static readonly Gen<Vec3> Axes = Anywhere.Where(p => p.Length > 1);

    public static readonly Gen<Vec3>[] Kinds =
        [Anywhere, OnGrid, FineGrid, Needle, Rounded, Huge, Turned, Sloped, InPlane, OnLine];

    public static readonly TheoryData<int> KindNumbers = [.. Enumerable.Range(0, Kinds.Length)];
}
