namespace Platewright.Build.Motion;

/// <summary>What a move is for. Time and material are told apart by it.</summary>
public enum PathKind : byte
{
    Wall,
    SolidFace,
    Infill,
    Support,
    Brim,

    /// <summary>A move of a motion program that lays down material, whatever for.</summary>
    Extruding,

    /// <summary>Without material: between paths, pulling back and pushing forward included.</summary>
    Travel,
}
