using Platewright.Study.Describing;
using Platewright.Study.Documents;
using Platewright.Study.Examining;

namespace Platewright.Study.Pipeline;

/// <summary>Models read and examined: the whole of <c>inspect</c>.</summary>
public static class InspectRun
{
    /// <param name="paths">Files and folders as the user gave them.</param>
    public static InspectDocument Of(
        IReadOnlyList<string> paths, ExamineOptions options, IProgressListener progress, CancellationToken cancel)
    {
        Examination all = new ExamineStage(options, null).RunAll([.. paths.SelectMany(ModelPaths.Below)], progress, cancel);
        return new InspectDocument([.. all.Parts.Select(ModelDescription.Of)], [.. all.Unusable.Select(ModelDescription.Of)]);
    }
}
