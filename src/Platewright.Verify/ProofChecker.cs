using System.Text.Json;

namespace Platewright.Verify;

/// <summary>
/// Checks written proofs of fit in interval arithmetic. It shares no code with the program that writes them: what it
/// accepts holds whatever that program does.
/// </summary>
public static class ProofChecker
{
    /// <summary>Checks every proof of a file, in order.</summary>
    /// <exception cref="ProofException">The file is not a proof file.</exception>
    public static IReadOnlyList<ProofResult> Check(Stream file)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(file);
            if (document.RootElement.ValueKind != JsonValueKind.Object || ProofEntry.Number(document.RootElement, "format") != 1)
                throw new ProofException("not a proof file of format 1");
            return [.. ProofEntry.Member(document.RootElement, "proofs").EnumerateArray().Select(CheckEntry)];
        }
        catch (JsonException error)
        {
            throw new ProofException($"not a JSON file: line {error.LineNumber + 1}, byte {error.BytePositionInLine}", error);
        }
        catch (InvalidOperationException error)
        {
            throw new ProofException("not a proof file: an entry is not of the expected kind", error);
        }
    }

    private static ProofResult CheckEntry(JsonElement e)
    {
        string file = "", machine = "";
        string? part = null;
        try
        {
            ProofEntry proof = ProofEntry.Read(e);
            (file, part, machine) = (proof.File, proof.Part, proof.Machine);
            CheckWitness(proof);
            var tree = new CellTree(proof);
            tree.Check();
            return new ProofResult(file, part, machine, proof.LowerScale, proof.UpperScale, tree.Count, null);
        }
        catch (ProofException error)
        {
            return new ProofResult(file, part, machine, 0, 0, 0, error.Message);
        }
    }

    private static void CheckWitness(ProofEntry proof)
    {
        Interval built = (Interval)proof.LowerScale * ((Interval)1 + proof.Shrinkage);
        // The pose must be at least as large as claimed.
        if (!(proof.WitnessScale >= built.Low) && proof.LowerScale > 0)
            throw new ProofException("the witness is smaller than the scale it is to prove");
        double[] q = proof.WitnessRotation;
        Turn turn = Turn.Of(q[0], q[1], q[2], q[3]);
        Interval scale = Interval.Max(proof.WitnessScale, built);
        if (!proof.Volume.Holds(proof.Vertices.Select(v => scale * turn.Apply(v) + proof.WitnessTranslation)))
            throw new ProofException("the witness does not lie inside the volume");
    }
}

/// <summary>What the checker says of one proof.</summary>
/// <param name="Cells">Cells of rotation space that were checked.</param>
/// <param name="Refused">Null where the proof holds, else one sentence.</param>
public sealed record ProofResult(
    string File, string? Part, string Machine, double LowerScale, double UpperScale, int Cells, string? Refused);
