using System.Globalization;
using Platewright.Build.Heat;
using Platewright.Fit;
using Platewright.Machines;

namespace Platewright.Study.Judgement;

/// <summary>What keeps a machine from making a part that fits it: heat it does not reach, walls thinner than one bead.</summary>
public static class Obstacles
{
    /// <param name="fit">How the part fits.</param>
    /// <param name="machine">
    /// Judged by what it says it heats to and by the steady state of the heaters it describes; where it does neither, heat is not
    /// judged.
    /// </param>
    /// <param name="material">Null where none is named; then heat is not judged.</param>
    /// <param name="thinnestWallMm">As drawn, mm; null where it is not known.</param>
    /// <param name="beadWidthMm">Width of one bead, mm.</param>
    /// <returns>One sentence for each obstacle; none where the part can be made as far as it fits.</returns>
    public static IReadOnlyList<string> Of(
        FitResult fit, Machine machine, Material? material, double? thinnestWallMm, double beadWidthMm)
    {
        List<string> found = [];
        if (material is not null)
            found.AddRange(HeatReach.Of(machine, material).Sentences);
        double scale = fit.Verdict == Verdict.Scaled ? fit.Pose.Scale : 1;
        if (thinnestWallMm * scale < beadWidthMm)
            found.Add($"Its thinnest wall, about {Number(thinnestWallMm!.Value * scale)} mm, is below one bead of {Number(beadWidthMm)} mm.");
        return found;
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
