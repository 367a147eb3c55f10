using System.Collections.Immutable;
using Platewright.Fit;
using Platewright.Formats;
using Platewright.Formats.Toml;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Study;

/// <summary>
/// What is to be studied, with every name and path resolved: from a study file, or from a plain folder.
/// </summary>
/// <param name="Name">Shown as the title.</param>
/// <param name="Note">Anything the user wrote about it.</param>
/// <param name="Folder">Full path of the folder that relative paths start from.</param>
/// <param name="Machines">At least one; their ids differ.</param>
/// <param name="OwnMaterials">Materials the study file adds or states anew.</param>
/// <param name="Projects">In the order of the file, those of a folder sorted by name.</param>
/// <param name="Sizing">How much work there is, where, for how much.</param>
public sealed record StudyPlan(
    string Name, string? Note, string Folder, ImmutableArray<Machine> Machines, StudyOptions Options,
    ImmutableArray<Material> OwnMaterials, ImmutableArray<PlannedProject> Projects, SizingPlan Sizing);

/// <summary>Numbers that hold for the whole study.</summary>
public sealed record StudyOptions
{
    /// <summary>
    /// Width of one bead, mm; a wall thinner than it cannot be made. 0.45: common practice, no source.
    /// </summary>
    public double BeadWidthMm { get; init; } = 0.45;

    /// <summary>A fit with less clearance than this is called tight, mm.</summary>
    public double TightMm { get; init; } = 2;

    /// <summary>
    /// Smallest scale accepted where nothing else is said. 0.95 is our choice: common practice has none.
    /// </summary>
    public double LeastScale { get; init; } = 0.95;

    /// <summary>Largest relative gap of the proof between the scale reached and its upper bound.</summary>
    public double Tolerance { get; init; } = 1e-4;

    /// <summary>Confidence of the intervals, between 0 and 1.</summary>
    public double Confidence { get; init; } = 0.95;
}

/// <summary>Parts that are only useful together.</summary>
/// <param name="Wanted">Work never tried so far: it has no files of its own in a folder of done work.</param>
/// <param name="Parts">At least one.</param>
/// <param name="Place">Where the study file has it; null for a project that a folder made.</param>
public sealed record PlannedProject(
    string Name, string? Note, bool Wanted, ImmutableArray<PlannedPart> Parts, TomlPlace? Place)
{
    /// <summary>How often it is made.</summary>
    public Frequency Frequency { get; init; } = Frequency.Unsaid;
}

/// <summary>One part of a project, or every object of one file: either a file or dimensions.</summary>
public sealed record PlannedPart
{
    public required string Name { get; init; }

    /// <summary>True when the study file gave the name; otherwise it comes from the file or the dimensions.</summary>
    public bool Named { get; init; }

    /// <summary>
    /// Path as shown, from the study's folder, with forward slashes; null for a part given by its dimensions.
    /// </summary>
    public string? File { get; init; }

    /// <summary>Full path; null for a part given by its dimensions.</summary>
    public string? FullPath { get; init; }

    /// <summary>The one object of the file that is meant; null for all of them.</summary>
    public string? Object { get; init; }

    /// <summary>Size of a part given by its dimensions alone, mm; null for a part with a file.</summary>
    public Vec3? DimensionsMm { get; init; }

    /// <summary>How many of it the project needs, 1 or more.</summary>
    public int Quantity { get; init; } = 1;

    /// <summary>Null where the study does not say; the file itself may.</summary>
    public Material? Material { get; init; }

    public string? Colour { get; init; }

    /// <summary>The unit to take the file's numbers in, whatever it says; null leaves it to the file.</summary>
    public LengthUnit? Unit { get; init; }

    /// <summary>True to take every loose shell of the file as a part of its own.</summary>
    public bool Separate { get; init; }

    /// <summary>Brim in place of the material's, mm; null leaves it to the material.</summary>
    public double? BrimMm { get; init; }

    public required Allowance Allowance { get; init; }

    /// <summary>What quality it is wanted in.</summary>
    public Recipe Recipe { get; init; } = RecipeCatalog.Usual;

    /// <summary>
    /// Name of its group of alternatives, unique in the project: the best of a group counts; null for none.
    /// </summary>
    public string? AnyOf { get; init; }

    /// <summary>Where the file or the dimensions are named, for messages; null for a part that a folder made.</summary>
    public TomlPlace? Place { get; init; }
}
