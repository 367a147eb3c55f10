namespace Platewright.Study.Pipeline;

/// <summary>What of a study is written down for others.</summary>
/// <param name="WithModels">Whether the parts' geometry is; pictures always are.</param>
/// <param name="HideNames">Whether projects, parts and files get neutral names.</param>
public sealed record Sharing(bool WithModels, bool HideNames)
{
    public static readonly Sharing Everything = new(WithModels: true, HideNames: false);
}
