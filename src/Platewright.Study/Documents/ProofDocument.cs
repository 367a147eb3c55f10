using System.Text.Json.Serialization;
using Platewright.Fit.Proofs;
using Platewright.Geometry;

namespace Platewright.Study.Documents;

/// <summary>What <c>--proof FILE</c> writes and <c>platewright verify</c> checks: one entry for each part and machine.</summary>
public sealed record ProofsDocument(IReadOnlyList<ProofDocument> Proofs)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <param name="LowerScale">Largest scale of the drawn part that was reached.</param>
/// <param name="UpperScale">No scale above it fits in any pose.</param>
/// <param name="Witness">The pose at the lower scale; its scale includes shrinkage.</param>
public sealed record ProofDocument(
    string File, string? Part, string Machine, IReadOnlyList<IReadOnlyList<double>> VerticesMm, double Shrinkage,
    ProofVolumeDocument Volume, double LowerScale, PoseDocument Witness, double UpperScale, ProofBoundDocument Bound)
{
    public static ProofDocument Of(string file, string? part, string machine, FitProof proof) => new(
        file, part, machine, [.. proof.VerticesMm.Select(Numbers)], proof.Shrinkage,
        new ProofVolumeDocument(
            proof.Volume.Shape, Numbers(proof.Volume.CornerMm), Numbers(proof.Volume.SizeMm), proof.Volume.RadiusMm,
            [.. proof.Volume.PolygonMm.Select(Numbers)], proof.Volume.HeightMm),
        proof.LowerScale,
        new PoseDocument(
            proof.Witness.Scale,
            [proof.Witness.Rotation.W, proof.Witness.Rotation.X, proof.Witness.Rotation.Y, proof.Witness.Rotation.Z],
            Numbers(proof.Witness.Translation)),
        proof.UpperScale,
        new ProofBoundDocument(
            proof.Bound.SlabNormal is { } n ? Numbers(n) : null, proof.Bound.Charts, proof.Bound.Cut, proof.Bound.Cells,
            [.. proof.Bound.Closings.Select(Closing)]));

    private static double[] Numbers(Vec3 v) => [v.X, v.Y, v.Z];

    private static double[] Numbers(Vec2 v) => [v.X, v.Y];

    private static ProofContactDocument[] Closing(IReadOnlyList<ProvedContact> contacts) =>
        [.. contacts.Select(c => new ProofContactDocument(
            c.Weight, [.. c.Terms.Select(t => t.Vertex)], [.. c.Terms.SkipLast(1).Select(t => Numbers(t.Normal))]))];
}

public sealed record ProofVolumeDocument(
    string Shape, IReadOnlyList<double> CornerMm, IReadOnlyList<double> SizeMm, double RadiusMm,
    IReadOnlyList<IReadOnlyList<double>> PolygonMm, double HeightMm);

public sealed record ProofBoundDocument(
    IReadOnlyList<double>? SlabNormal, IReadOnlyList<int> Charts, string Cut, string Cells,
    IReadOnlyList<IReadOnlyList<ProofContactDocument>> Closings);

/// <param name="Normals">One fewer than vertices: the last normal is minus the sum of the others.</param>
public sealed record ProofContactDocument(
    double Weight, IReadOnlyList<int> Vertices, IReadOnlyList<IReadOnlyList<double>> Normals);
