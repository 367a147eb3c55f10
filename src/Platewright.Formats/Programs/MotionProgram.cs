using Platewright.Geometry;

namespace Platewright.Formats.Programs;

/// <summary>What a motion program does, whatever machine it may run on.</summary>
public sealed record MotionProgram
{
    public required string File { get; init; }

    /// <summary>In order. Arcs are chords within <see cref="ProgramReader.ChordToleranceMm"/> of them.</summary>
    public required ReadOnlyMemory<ProgramMove> Moves { get; init; }

    /// <summary>Length of all path, mm; arcs count with their true length.</summary>
    public required double PathMm { get; init; }

    /// <summary>Around all path on which material is laid down; null where there is none.</summary>
    public required Bounds3? ExtrudingMm { get; init; }

    /// <summary>Around every place the program moves to; null where it moves nowhere.</summary>
    public required Bounds3? AllMm { get; init; }

    public required FilamentUse Filament { get; init; }

    /// <summary>Temperatures of the nozzle; null where the program sets none.</summary>
    public WantedHeat? Nozzle { get; init; }

    public WantedHeat? Bed { get; init; }

    public WantedHeat? Chamber { get; init; }

    /// <summary>How often another tool than the one at hand is called.</summary>
    public int ToolChanges { get; init; }

    /// <summary>How often the program asks for other filament (M600).</summary>
    public int FilamentChanges { get; init; }

    /// <summary>How often axes are homed (G28).</summary>
    public int Homings { get; init; }

    /// <summary>Time the program waits (G4), s.</summary>
    public double WaitS { get; init; }

    /// <summary>Distinct heights at which material is laid down.</summary>
    public int Layers { get; init; }

    /// <summary>Words the reader does not know, by their first line. What they would do is not counted.</summary>
    public required IReadOnlyList<UnknownWord> Unknown { get; init; }

    /// <summary>How the program was read where dialects differ, as sentences.</summary>
    public required IReadOnlyList<string> Choices { get; init; }
}

/// <summary>Filament a program moves, mm. What it uses up is <see cref="NetMm"/>.</summary>
/// <param name="ForwardMm">All pushed forward, mm; what was pulled back before counts again.</param>
/// <param name="RetractedMm">All pulled back, mm.</param>
public readonly record struct FilamentUse(double ForwardMm, double RetractedMm)
{
    public double NetMm => ForwardMm - RetractedMm;
}

/// <summary>Temperatures asked for, °C; switching off does not count.</summary>
public readonly record struct WantedHeat(double FirstC, double MostC);

/// <summary>A word that was passed over.</summary>
/// <param name="Word">As written, as <c>M900</c>.</param>
/// <param name="Count">How often it stands there.</param>
/// <param name="FirstLine">Where it stands first, from 1.</param>
public sealed record UnknownWord(string Word, int Count, int FirstLine);
