namespace Platewright.Geometry;

/// <summary>Something about a mesh that its owner should know.</summary>
/// <param name="Code">A stable snake_case word for scripts; all of them are in <see cref="FindingCodes"/>.</param>
/// <param name="Count">How many of it, at least 1.</param>
/// <param name="Message">What it is and what it means for printing, in a sentence or two.</param>
public sealed record Finding(string Code, int Count, string Message)
{
    /// <summary>Most places named for one finding.</summary>
    public const int MostPlaces = 8;

    /// <summary>Where to look, at most <see cref="MostPlaces"/>; empty where it concerns the whole mesh.</summary>
    public IReadOnlyList<FindingPlace> Places { get; init; } = [];
}

/// <summary>A place on a mesh, mm, in the mesh's own coordinates: a stretch, or a point where both ends are the same.</summary>
public readonly record struct FindingPlace(Vec3 From, Vec3 To)
{
    public static FindingPlace At(Vec3 point) => new(point, point);
}
