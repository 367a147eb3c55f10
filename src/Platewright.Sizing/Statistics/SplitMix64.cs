namespace Platewright.Sizing.Statistics;

/// <summary>
/// A small generator whose numbers never change with the machine or the runtime. Source: Steele, Lea and Flood, "Fast
/// splittable pseudorandom number generators", OOPSLA 2014, 453-472; constants of the variant in public use.
/// </summary>
internal struct SplitMix64(ulong seed)
{
    private const ulong GoldenGamma = 0x9E3779B97F4A7C15;

    private ulong _state = seed;

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        ulong z = _state += GoldenGamma;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>
    /// A number 0 … <paramref name="below"/> − 1: the upper half of a product with 64 bits, off an even chance by less
    /// than below / 2⁶⁴.
    /// </summary>
    public int Below(int below) => (int)Math.BigMul(Next(), (ulong)below, out _);
}
