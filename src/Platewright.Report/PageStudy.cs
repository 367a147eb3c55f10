using Platewright.Study.Documents;

namespace Platewright.Report;

/// <summary>What the page unpacks when it opens: the study without its looks, and where in the page each look lies.</summary>
/// <param name="Study">Its parts have neither model nor picture.</param>
/// <param name="Models">For each part the number of its <c>model-N</c> element; null where it has none.</param>
/// <param name="Pictures">For each part the number of its <c>picture-N</c> element; null where it has none.</param>
internal sealed record PageStudy(StudyDocument Study, IReadOnlyList<int?> Models, IReadOnlyList<int?> Pictures);
