using Platewright.Geometry;

namespace Platewright.Formats.Reading;

/// <summary>What one file is read under, handed down through the readers.</summary>
internal sealed record ReadRequest(string File, ReadLimits Limits, LengthUnit? Unit, CancellationToken Cancel)
{
    /// <summary>Files in other words than the common ones are read by this remedy.</summary>
    public const string ExportAgain = "export or download it again";

    /// <summary>Whatever the limit, arrays of three corners and their tables must not outgrow the runtime.</summary>
    private const int MostTriangles = 100_000_000;

    public ModelFileException Refuse(string? place, string problem, string remedy = ExportAgain) =>
        new(File, place, problem, remedy);

    public ModelFileException RefuseEmpty() => Refuse(null, "it holds no triangles, so there is nothing to make");

    /// <summary>Refuses more triangles than the limit allows.</summary>
    public void CheckTriangles(long count, string? place)
    {
        int most = Math.Min(Limits.Triangles, MostTriangles);
        if (count > most)
            throw Refuse(place, $"it holds more than {most} triangles", "simplify it or raise the triangle limit");
    }

    /// <summary>
    /// Whether a coordinate in mm rounds to a single-precision number: then volumes stay finite in double.
    /// </summary>
    public static bool IsInRange(double mm) => float.IsFinite((float)mm);

    public static bool IsInRange(Vec3 mm) => IsInRange(mm.X) && IsInRange(mm.Y) && IsInRange(mm.Z);

    /// <summary>The unit to take the numbers in, and why.</summary>
    public (LengthUnit Unit, UnitSource Source) UnitOr(LengthUnit? stated) =>
        Unit is { } said ? (said, UnitSource.Overridden)
        : stated is { } inFile ? (inFile, UnitSource.Stated)
        : (LengthUnit.Millimetre, UnitSource.Assumed);
}
