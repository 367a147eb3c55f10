using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Platewright.Study.Store;

/// <summary>
/// What a result is kept under: SHA-256 over the stage, its version, the keys of its inputs, its options in canonical text and
/// its seed. Equal keys mean equal results, on any machine and at any thread count.
/// </summary>
public readonly record struct ResultKey(string Hex)
{
    /// <param name="stage">The stage and, with it, its version.</param>
    /// <param name="inputs">Keys or content hashes of what goes in, in order.</param>
    /// <param name="options">Everything else that changes the answer, in canonical text.</param>
    /// <param name="seed">Seed of the stage's random choices; 0 where it makes none.</param>
    public static ResultKey Of(Stage stage, IReadOnlyList<string> inputs, string options, int seed = 0)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Append(hash, stage.Name);
        Append(hash, stage.Version);
        Append(hash, inputs.Count);
        foreach (string input in inputs) Append(hash, input);
        Append(hash, options);
        Append(hash, seed);
        return new ResultKey(Convert.ToHexStringLower(hash.GetHashAndReset()));
    }

    /// <summary>The 32 bytes behind <see cref="Hex"/>.</summary>
    internal byte[] ToBytes() => Convert.FromHexString(Hex);

    // Lengths go before texts: ("ab", "c") and ("a", "bc") are different inputs.
    private static void Append(IncrementalHash hash, string text)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        Append(hash, bytes.Length);
        hash.AppendData(bytes);
    }

    private static void Append(IncrementalHash hash, int number)
    {
        Span<byte> bytes = stackalloc byte[sizeof(int)];
        BinaryPrimitives.WriteInt32LittleEndian(bytes, number);
        hash.AppendData(bytes);
    }
}
