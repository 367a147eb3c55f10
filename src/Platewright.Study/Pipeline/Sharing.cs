namespace Platewright.Study.Pipeline;

/// <summary>What the results of a study give away when they are passed on. It changes no verdict and no number.</summary>
/// <param name="WithModels">Whether they carry the parts' geometry to look at; pictures stay.</param>
/// <param name="HideNames">
/// Whether projects, parts, objects, files and the study get neutral names, and free notes are left out. Machines, materials,
/// recipes and colours keep theirs.
/// </param>
public sealed record Sharing(bool WithModels, bool HideNames)
{
    /// <summary>Everything is in the results: for whoever runs the study.</summary>
    public static readonly Sharing Everything = new(WithModels: true, HideNames: false);
}
