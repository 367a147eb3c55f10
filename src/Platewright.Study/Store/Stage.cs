namespace Platewright.Study.Store;

/// <summary>
/// A step of the study whose results are kept. A change of what a stage computes must raise its version, or the store would
/// go on serving old answers; a test pins a hash of each stage's output for each version.
/// </summary>
public sealed record Stage(string Name, int Version)
{
    /// <summary>A model file read, measured and judged: what is known of each of its parts, its look included.</summary>
    public static readonly Stage Examine = new("examine", 6);

    /// <summary>One part on one machine.</summary>
    public static readonly Stage Fit = new("fit", 6);

    /// <summary>The smallest volumes that hold a part.</summary>
    public static readonly Stage Need = new("need", 5);

    /// <summary>One part built on one machine: pose, time, material, energy.</summary>
    public static readonly Stage Estimate = new("estimate", 4);

    /// <summary>Which machine or mix the work needs, for the whole study.</summary>
    public static readonly Stage Size = new("size", 4);
}
