namespace Platewright.Machines;

/// <summary>
/// What is lost at each wall of the build volume and at its top, mm, 0 or more. Margins belong to the machine: they
/// never scale with the part. A round or polygonal surface has one margin all round: there the four sides are equal.
/// </summary>
public sealed record Margins(double LeftMm, double RightMm, double FrontMm, double BackMm, double TopMm)
{
    public static readonly Margins None = new(0, 0, 0, 0, 0);

    /// <summary>The same margin at every wall and at the top.</summary>
    public static Margins Uniform(double mm) => new(mm, mm, mm, mm, mm);
}
