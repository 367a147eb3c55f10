using System.Runtime.CompilerServices;
using Platewright.Geometry;

namespace Platewright.Formats.Stl;

/// <summary>A position as binary STL stores it: the bits of three single-precision numbers, -0 made 0.</summary>
internal readonly record struct FloatPosition(uint X, uint Y, uint Z)
{
    private const uint ExponentBits = 0x7F80_0000;

    /// <summary>Neither NaN nor infinite in any coordinate.</summary>
    public bool IsFinite =>
        (X & ExponentBits) != ExponentBits && (Y & ExponentBits) != ExponentBits && (Z & ExponentBits) != ExponentBits;

    /// <summary>Well mixed in its upper bits.</summary>
    public uint Hash
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get
        {
            // Odd constants of the golden ratio and of square roots of 2 and 3: mixing only, any others would do.
            ulong mixed = (X * 0x9E37_79B9_7F4A_7C15UL) ^ (Y * 0xB504_F333_F9DE_6485UL) ^ (Z * 0xBB67_AE85_84CA_A73BUL);
            return (uint)((mixed ^ (mixed >> 29)) * 0x9E37_79B9_7F4A_7C15UL >> 32);
        }
    }

    public Vec3 ToVec3() => new(
        BitConverter.UInt32BitsToSingle(X), BitConverter.UInt32BitsToSingle(Y), BitConverter.UInt32BitsToSingle(Z));
}
