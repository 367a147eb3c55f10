namespace Platewright.Formats.Programs;

internal enum WordUse
{
    Unknown,

    /// <summary>The interpreter acts on it.</summary>
    Read,

    /// <summary>Known, and of no effect on path, time or material.</summary>
    NoEffect,

    /// <summary>The same, and what follows may be text.</summary>
    Remark,
}

/// <summary>The words of RS-274 and of common extrusion practice, × 10.</summary>
internal static class KnownWords
{
    public static WordUse OfG(int code) => code switch
    {
        0 or 10 or 20 or 30 or 40 or 170 or 180 or 190 or 200 or 210 or 280 or 900 or 910 or 920 or 921 => WordUse.Read,
        // No cutter or length offset, first coordinate system, path control, no cycle, feed per minute, return level.
        400 or 490 or 540 or 610 or 640 or 800 or 911 or 940 or 980 or 990 => WordUse.NoEffect,
        _ => WordUse.Unknown,
    };

    public static WordUse OfM(int code) => code switch
    {
        20 or 300 or 820 or 830 or 1040 or 1090 or 1400 or 1900 or 1410 or 1910 or 2200 or 2210 or 6000 => WordUse.Read,
        // Pauses for a person, tool change (T counts it), fan, acceleration.
        0 or 10 or 60 or 1060 or 1070 or 2040 => WordUse.NoEffect,
        // Motors with axis letters, progress, questions to the machine, texts on its display.
        170 or 180 or 730 or 840 or 1050 or 1100 or 1140 or 1150 or 1170 or 1180 => WordUse.Remark,
        _ => WordUse.Unknown,
    };
}
