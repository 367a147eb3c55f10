using Platewright.Machines;

namespace Platewright.Build.Estimates;

/// <summary>
/// Another nozzle bore: beads and layers grow with it, as they do when one nozzle is changed for another and the recipe is kept in
/// its proportions. The melt rate stays: it is the heater's.
/// </summary>
public static class BoreChoice
{
    /// <summary>The machine with another bore, mm, above 0.</summary>
    public static Machine With(Machine machine, double boreMm) =>
        machine with { Extruder = machine.Extruder with { NozzleBoreMm = boreMm } };

    /// <summary>The recipe in the proportion of two bores.</summary>
    public static Recipe With(Recipe recipe, double fromMm, double toMm)
    {
        double ratio = toMm / fromMm;
        return ratio == 1
            ? recipe
            : recipe with { LayerHeightMm = recipe.LayerHeightMm * ratio, BeadWidthMm = recipe.BeadWidthMm * ratio };
    }
}
