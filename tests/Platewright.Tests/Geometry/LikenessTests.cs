using CsCheck;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

public sealed class LikenessTests
{
    /// <summary>An angle with unequal legs and a lug to one side: no turn makes it its own mirror image.</summary>
    private static readonly Mesh Bracket = SharedMeshes.Joined(
        Solids.Block(new(0, 0, 0), new(60, 20, 4)), Solids.Block(new(0, 0, 4), new(4, 20, 40)),
        Solids.Block(new(40, 20, 0), new(50, 32, 4)));

    /// <summary>The same without the lug: its own mirror image.</summary>
    private static readonly Mesh Angle = SharedMeshes.Joined(
        Solids.Block(new(0, 0, 0), new(60, 20, 4)), Solids.Block(new(0, 0, 4), new(4, 20, 40)));

    private static readonly Gen<Matrix3> Turns =
        Gen.Select(Clouds.Axes, Gen.Double[0, 6], (axis, angle) => Rotation.About(axis, angle).ToMatrix());

    private static readonly Matrix3 Mirror = new(new(-1, 0, 0), Vec3.UnitY, Vec3.UnitZ);

    public static readonly TheoryData<string> Parts =
        ["bracket", "angle", "block", "cube", "ball", "torus", "gear", "helical"];

    [Theory, MemberData(nameof(Parts))]
    public void Compare_TurnedCopyInSinglePrecision_IsTheSame(string part) =>
        Turns.Sample(
            turn => AssertLike(LikenessKind.Same, 1, Part(part), Single(Part(part).Transformed(turn, new(7, -3, 50)))),
            iter: 12);

    [Theory, MemberData(nameof(Parts))]
    public void Compare_ScaledCopy_IsScaled(string part) =>
        Gen.Select(Turns, Gen.Double[0.3, 0.95]).Sample(
            (turn, scale) => AssertLike(
                LikenessKind.Scaled, scale, Part(part), Single(Part(part).Transformed(turn * scale, default))),
            iter: 12);

    [Theory, MemberData(nameof(Parts))]
    public void Compare_MirroredCopy_IsMirroredOnlyWhereNoTurnDoes(string part)
    {
        LikenessKind expected = part is "bracket" or "helical" ? LikenessKind.Mirrored : LikenessKind.Same;
        Turns.Sample(
            turn => AssertLike(expected, 1, Part(part), Single(Part(part).Transformed(turn * Mirror, default))),
            iter: 12);
    }

    [Fact]
    public void Compare_DifferentParts_AreNotAlike()
    {
        string[] names = [.. Parts.Select(p => p.Data)];
        foreach (string a in names)
            foreach (string b in names)
                if (a != b) AssertLike(LikenessKind.None, 1, Part(a), Part(b));
    }

    [Fact]
    public void Compare_HoleElsewhere_IsNotAlike()
    {
        Mesh With(double x) => SharedMeshes.Joined(
            Solids.Block(default, new(80, 40, 5)), Solids.InsideOut(Solids.Block(new(x, 10, 1), new(x + 10, 20, 3))));
        AssertLike(LikenessKind.None, 1, With(10), With(20));
        AssertLike(LikenessKind.Mirrored, 1, With(10), With(60));
    }

    [Fact]
    public void Groups_OfAFolder_GatherCopiesSizesAndMirrors()
    {
        Matrix3 turn = Rotation.About(new(1, 2, 3), 1).ToMatrix();
        Mesh[] parts =
        [
            Bracket, Solids.Ball(10), Bracket.Transformed(turn, default), Solids.Torus(20, 4),
            Bracket.Transformed(turn * 0.5, default),
            Bracket.Transformed(turn * Mirror, default), Solids.Ball(20), new Mesh([default], [0, 0, 0]),
        ];
        IReadOnlyList<AlikeGroup> groups = AlikeGroup.Of([.. parts.Select(Signature)]);
        Assert.Equal(2, groups.Count);
        Assert.Equal(0, groups[0].First);
        Assert.Equal([2, 4, 5], groups[0].Others.Select(o => o.Part));
        Assert.Equal(
            [LikenessKind.Same, LikenessKind.Scaled, LikenessKind.Mirrored],
            groups[0].Others.Select(o => o.Likeness.Kind));
        Assert.Equal(0.5, groups[0].Others[1].Likeness.Scale, 1e-6);
        Assert.Equal(6, Assert.Single(groups[1].Others).Part);
    }

    [Fact]
    public void Groups_OfSharedMeshes_FindTheTwoCopiesOfOne()
    {
        string[] files = [.. SharedMeshes.Valid.Select(r => r.Data)];
        Repository.SharedOrSkip("models", "manifest.json");
        string[] solid = [.. files.Where(f => f.EndsWith(".stl", StringComparison.OrdinalIgnoreCase))];
        IReadOnlyList<AlikeGroup> groups = AlikeGroup.Of([.. solid.Select(f => Signature(SharedMeshes.Of(f)))]);
        AlikeGroup group = Assert.Single(groups);
        string[] pair = [solid[group.First], solid[Assert.Single(group.Others).Part]];
        Assert.Equal(["Spider_ascii.stl", "Spider_binary.stl"], pair.Order());
    }

    private static ShapeSignature? Signature(Mesh mesh)
    {
        Mesh welded = Welding.Weld(mesh);
        return ShapeSignature.Of(welded, ConvexHull.Of(welded.Vertices));
    }

    private static void AssertLike(LikenessKind kind, double scale, Mesh a, Mesh b)
    {
        Likeness likeness = Likeness.Compare(Signature(a)!, Signature(b)!);
        Assert.Equal(kind, likeness.Kind);
        Assert.Equal(scale, likeness.Scale, 1e-5);
    }

    private static Mesh Part(string name) => name switch
    {
        "bracket" => Bracket,
        "angle" => Angle,
        "block" => Solids.Block(default, new(50, 30, 20)),
        "cube" => Solids.Block(default, new(20, 20, 20)),
        "ball" => Solids.Ball(20),
        "torus" => Solids.Torus(20, 5),
        "gear" => Solids.Gear(18, 0),
        "helical" => Solids.Gear(18, 0.15),
        _ => throw new ArgumentException("unknown", nameof(name)),
    };

    private static Mesh Single(Mesh mesh) => new(
        [.. mesh.Vertices.ToArray().Select(p => new Vec3((float)p.X, (float)p.Y, (float)p.Z))], mesh.Corners.ToArray());
}
