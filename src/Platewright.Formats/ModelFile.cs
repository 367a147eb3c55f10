namespace Platewright.Formats;

/// <summary>One model file that was read: what it holds and what it says about itself.</summary>
public sealed record ModelFile
{
    /// <summary>The name to show, with forward slashes; <c>pack.zip/inner/name.stl</c> for a file in a pack.</summary>
    public required string File { get; init; }

    public required ModelFormat Format { get; init; }

    /// <summary>The unit the file's numbers were taken in; the meshes are in mm whatever it is.</summary>
    public required LengthUnit Unit { get; init; }

    public required UnitSource UnitSource { get; init; }

    /// <summary>At least one part.</summary>
    public required IReadOnlyList<ModelPart> Parts { get; init; }

    public ModelOrigin Origin { get; init; } = ModelOrigin.Unknown;

    /// <summary>What the reader passed over or had to decide; empty for most files.</summary>
    public IReadOnlyList<ModelNote> Notes { get; init; } = [];
}

/// <summary>Who made a model and under which terms, in the file's own words; null where it does not say.</summary>
public sealed record ModelOrigin(string? Title, string? Designer, string? Licence, string? Copyright)
{
    public static readonly ModelOrigin Unknown = new(null, null, null, null);
}

/// <summary>Something the user should know about how a file was read.</summary>
/// <param name="Code">A stable snake_case word for scripts, as <c>beams_left_out</c>.</param>
/// <param name="Message">One sentence.</param>
public sealed record ModelNote(string Code, string Message);
