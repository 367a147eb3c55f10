using Platewright.Study.Documents;

namespace Platewright.Study.Describing;

/// <summary>How a part looks: its picture, and its geometry where it is to be shown.</summary>
internal sealed record PartLook(ModelDocument? Model, string? Picture);
