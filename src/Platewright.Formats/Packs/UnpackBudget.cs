namespace Platewright.Formats.Packs;

/// <summary>How many bytes may still be unpacked from one file, archives in archives included.</summary>
internal sealed class UnpackBudget(long bytes)
{
    public long Left { get; private set; } = bytes;

    public void Spend(long unpacked) => Left -= unpacked;
}
