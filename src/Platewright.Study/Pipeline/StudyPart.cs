using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Study.Examining;

namespace Platewright.Study.Pipeline;

/// <summary>One part of one project, ready for the stages after examination.</summary>
public sealed record StudyPart
{
    /// <summary>Unique in the study.</summary>
    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>Index of its project in the study.</summary>
    public required int Project { get; init; }

    public required PlannedPart Planned { get; init; }

    /// <summary>What was found in its file; null for a part given by its dimensions.</summary>
    public ExaminedPart? Examined { get; init; }

    /// <summary>Full path of its file; null for a part given by its dimensions.</summary>
    public string? Path => Planned.FullPath;

    /// <summary>What it is made of where that is known: the study's word before the file's.</summary>
    public Material? Material { get; init; }

    /// <summary>The corners of its hull, as <see cref="ExaminedPart.Hull"/> has them.</summary>
    public required byte[] Hull { get; init; }

    /// <summary>Content hash of the hull: equal shapes share their results.</summary>
    public required string ShapeKey { get; init; }

    public double Shrinkage => Material?.Shrinkage ?? 0;

    public double BrimMm => Planned.BrimMm ?? Material?.BrimMm ?? 0;

    /// <summary>Axis-aligned size as drawn, mm.</summary>
    public Vec3 SizeMm => Examined?.Bounds.Size ?? Planned.DimensionsMm ?? default;

    /// <summary>Its shape, built anew.</summary>
    public PartShape ToShape() => new(ExaminedPart.HullOf(Hull), Shrinkage, BrimMm);
}
