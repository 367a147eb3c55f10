using System.Numerics;
using System.Runtime.CompilerServices;

namespace Platewright.Formats.Stl;

/// <summary>Distinct positions in the order of their first use, found again by open addressing.</summary>
internal sealed class PositionTable
{
    private readonly int[] _slots;
    private readonly FloatPosition[] _positions;
    private readonly int _shift;

    /// <param name="capacity">Most positions that will be put in, at least 0.</param>
    public PositionTable(int capacity)
    {
        // At most half full, so that a search looks at two slots or so.
        int bits = Math.Max(4, BitOperations.Log2((uint)Math.Max(capacity, 1)) + 2);
        _slots = new int[1 << bits];
        _shift = 32 - bits;
        _positions = GC.AllocateUninitializedArray<FloatPosition>(capacity);
    }

    public int Count { get; private set; }

    public ReadOnlySpan<FloatPosition> Positions => _positions.AsSpan(0, Count);

    public void Clear()
    {
        Array.Clear(_slots);
        Count = 0;
    }

    /// <summary>The position's place among the distinct ones, from 0.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int PlaceOf(FloatPosition position)
    {
        int[] slots = _slots;
        uint slot = position.Hash >> _shift;
        while (true)
        {
            int held = slots[slot];
            if (held == 0) break;
            if (_positions[held - 1] == position) return held - 1;
            slot = (slot + 1) & (uint)(slots.Length - 1);
        }
        _positions[Count] = position;
        slots[slot] = Count + 1;
        return Count++;
    }
}
