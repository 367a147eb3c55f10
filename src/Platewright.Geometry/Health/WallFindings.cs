namespace Platewright.Geometry;

/// <summary>The thinnest wall, measured at points of the surface.</summary>
internal static class WallFindings
{
    /// <summary>The wall that is stated is not the thinnest sample but this one in order, so that a few slips of a
    /// broken mesh do not decide.</summary>
    private const int Rank = 4;

    /// <returns>The thinnest wall, mm; null where none was found.</returns>
    public static double? AddTo(FindingList findings, Mesh mesh, HealthOptions options)
    {
        if (options.WallSamples == 0) return null;
        (WallSample[] walls, double[] others) = WallThickness.Sample(mesh, options.WallSamples);
        if (walls.Length == 0) return null;
        double thinnest = walls[Math.Min(Rank, walls.Length - 1)].ThicknessMm;
        int all = walls.Length + others.Length, below = walls.Select(w => w.ThicknessMm).Concat(others).Count(w => w < options.BeadWidthMm);
        if (thinnest >= options.BeadWidthMm) return thinnest;
        findings.Add(FindingCodes.ThinWalls, below, n =>
            $"The thinnest wall is about {Words.Length(thinnest)}, below one bead of " +
            $"{Words.Length(options.BeadWidthMm)}: it would be left out or come out thicker (an " +
            $"approximation: {n} of {all} sample points lie on walls below a bead).",
            walls.Where(w => w.ThicknessMm < options.BeadWidthMm).Select(w => w.Across));
        return thinnest;
    }
}
