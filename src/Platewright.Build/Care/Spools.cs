using Platewright.Machines;

namespace Platewright.Build.Care;

/// <summary>How many spools a build takes.</summary>
/// <param name="MassG">Filament it needs, g.</param>
/// <param name="SpoolG">Filament on one spool, g.</param>
public sealed record Spools(double MassG, double SpoolG)
{
    public double Count => MassG / SpoolG;

    /// <summary>Changes of the spool during the build, starting with a full one.</summary>
    public int Changes => Math.Max(0, (int)Math.Ceiling(Count) - 1);

    /// <summary>Null where one full spool is enough.</summary>
    public string? Sentence => Changes == 0
        ? null
        : $"Needs {Count:0.0#} spools of {SpoolG:0} g: a change ends unattended running.";

    /// <param name="material">The material.</param>
    /// <param name="massG">Filament the build needs, support and waste included, g, not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mass is negative or not a number.</exception>
    public static Spools Of(Material material, double massG)
    {
        if (!(massG >= 0)) throw new ArgumentOutOfRangeException(nameof(massG), massG, "a mass is not negative");
        return new Spools(massG, material.SpoolG);
    }
}
