namespace Platewright.Formats;

/// <summary>The units of length a model file may be drawn in.</summary>
public enum LengthUnit
{
    Micrometre,
    Millimetre,
    Centimetre,
    Metre,
    Inch,
    Foot,
}

/// <summary>Where the unit of a model file comes from.</summary>
public enum UnitSource
{
    /// <summary>The file says nothing; mm is assumed.</summary>
    Assumed,

    /// <summary>The file states it.</summary>
    Stated,

    /// <summary>The user said so, whatever the file says.</summary>
    Overridden,
}
