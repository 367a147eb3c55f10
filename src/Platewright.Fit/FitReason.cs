using System.Globalization;
using Platewright.Geometry;

namespace Platewright.Fit;

/// <summary>One sentence that says why a verdict is what it is, with the numbers that decide it.</summary>
internal static class FitReason
{
    // Leaning less than this is "laid on a face", not "at an angle".
    private const double LevelDegrees = 0.05;
    private const double RoundingMm = 0.01;

    public static string Say(PreparedPart part, UsableVolume volume, WayOfFitting way, FitResult result)
    {
        string room = result.ClearanceMm >= 0 ? $"{Mm(result.ClearanceMm)} to spare" : "no room to spare";
        string tight = result.Tight ? ": tight, since real travel differs from the stated one" : "";
        string most = Percent(result.Tilted.LargestScale);
        return result.Verdict switch
        {
            Verdict.AsDrawn => $"fits as drawn, {room}{tight}",
            Verdict.Turned => $"fits when {HowTurned(way.Pose.Rotation)}, {room}{tight}",
            Verdict.Tilted => $"fits only {HowTilted(way.Pose.Rotation)}, with support underneath, {room}{tight}",
            Verdict.Scaled => $"{Missing(part, volume, way, result)}; fits at {Percent(way.LargestScale)}, where {Consequence(way.LargestScale)}",
            Verdict.InPieces => $"{Missing(part, volume, way, result)}; fits when cut into {result.Pieces} pieces of equal thickness",
            _ when !result.Proved && result.UpperBound >= 1 =>
                $"no pose was found ({most} at most), but none is proved not to exist (bound {Percent(result.UpperBound)})",
            _ => $"{Missing(part, volume, way, result)}; the largest copy that fits is {Percent(way.LargestScale)}",
        };
    }

    /// <summary>What scaling does to a part that must fit another.</summary>
    public static string Consequence(double scale) => string.Create(
        CultureInfo.InvariantCulture,
        $"an 8 mm bore becomes {8 * FloorTo(scale, 4):0.00} mm: mating and threaded parts stop fitting");

    private static string Missing(PreparedPart part, UsableVolume volume, WayOfFitting way, FitResult result)
    {
        double missing = Math.Max(0, -result.ClearanceMm);
        if (way == result.Tilted && way != result.Turned && way != result.Upright)
            return $"{Mm(missing)} too long even along the best diagonal";
        bool tall = HeightOf(part, way.Pose.Rotation) - volume.HeightMm >= missing - RoundingMm;
        return $"{Mm(missing)} too {(tall ? "tall" : "wide")} {(result.Tilted.LargestScale > way.LargestScale ? "in the ways allowed" : "in every pose")}";
    }

    private static double HeightOf(PreparedPart part, Rotation rotation)
    {
        Vec3 up = rotation.ToMatrix().Row2;
        ReadOnlySpan<Vec3> v = part.Grid.Vertices;
        return (v[part.Grid.Farthest(up)] - v[part.Grid.Farthest(-up)]).Dot(up) * part.Growth;
    }

    private static string HowTurned(Rotation rotation)
    {
        double lean = Lean(rotation);
        double spin = Spin(rotation);
        string about = $"turned {spin.ToString("0.#", CultureInfo.InvariantCulture)}° about the vertical";
        if (lean < LevelDegrees) return about;
        return spin < LevelDegrees ? "laid on another face" : $"laid on another face and {about}";
    }

    private static string HowTilted(Rotation rotation) =>
        $"tilted {Lean(rotation).ToString("0.#", CultureInfo.InvariantCulture)}° from how it is drawn";

    // Angle between the drawn vertical and the built one, degrees.
    private static double Lean(Rotation rotation) =>
        Math.Acos(Math.Clamp(rotation.ToMatrix().Row2.Z, -1, 1)) * 180 / Math.PI;

    // Turn about the vertical, 0 … 180 degrees.
    private static double Spin(Rotation rotation) =>
        (Math.Abs(2 * Math.Atan2(rotation.Z, rotation.W)) % (2 * Math.PI)) switch
        {
            > Math.PI and double a => (2 * Math.PI - a) * 180 / Math.PI,
            double a => a * 180 / Math.PI,
        };

    private static string Mm(double mm) => string.Create(CultureInfo.InvariantCulture, $"{mm:0.0} mm");

    // Rounded down: a scale that is promised must fit.
    private static string Percent(double scale) =>
        string.Create(CultureInfo.InvariantCulture, $"{FloorTo(scale, 3) * 100:0.#} %");

    private static double FloorTo(double value, int digits) =>
        Math.Floor(value * Math.Pow(10, digits) + 1e-6) / Math.Pow(10, digits);
}
