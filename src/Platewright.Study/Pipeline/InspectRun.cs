using Platewright.Study.Describing;
using Platewright.Study.Documents;
using Platewright.Study.Examining;
using Platewright.Study.Store;

namespace Platewright.Study.Pipeline;

/// <summary>Models read and examined: the whole of <c>inspect</c>.</summary>
public static class InspectRun
{
    /// <param name="models">Files and folders as the user gave them.</param>
    public static InspectDocument Of(
        IReadOnlyList<string> models, ExamineOptions options, IProgressListener progress, CancellationToken cancel)
    {
        var stage = new ExamineStage(new StageRunner(store: null), store: null);
        ModelPaths paths = ModelPaths.Below(models, cancel);
        IReadOnlyList<Examination> files = stage.Run([.. paths.Files.Select(p => new FileToExamine(p, options))], progress, cancel);
        return new InspectDocument(
            [.. files.SelectMany(f => f.Parts).Select(ModelDescription.Of)],
            [.. paths.Unusable.Concat(files.SelectMany(f => f.Unusable)).Select(ModelDescription.Of)]);
    }
}
