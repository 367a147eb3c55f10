using Platewright.Formats;
using Platewright.Geometry;
using Platewright.Study.Examining;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Estimating;

/// <summary>
/// Reads the mesh of a part again. The last file read is kept, since neighbours often lie in the same. Safe for use by several
/// threads.
/// </summary>
internal sealed class MeshReading(StudyOptions options)
{
    private readonly Lock _lock = new();
    private (StudyPart Part, IReadOnlyList<Mesh> Meshes)? _last;

    /// <exception cref="IOException">The file is not what it was when it was examined.</exception>
    public Mesh Of(StudyPart part, CancellationToken cancel)
    {
        lock (_lock)
        {
            if (_last is not { } last || !SameFile(last.Part, part)) _last = last = (part, Read(part, cancel));
            return last.Meshes.FirstOrDefault(m => ExaminedPart.KeyOf(m) == part.Examined!.MeshKey)
                ?? throw new IOException("it changed while the study ran; run the study again");
        }
    }

    private static bool SameFile(StudyPart a, StudyPart b) =>
        a.Path == b.Path && a.Planned.Unit == b.Planned.Unit && a.Planned.Separate == b.Planned.Separate;

    private IReadOnlyList<Mesh> Read(StudyPart part, CancellationToken cancel)
    {
        ExamineOptions reading = StudyWork.ReadingOf(part.Planned, options);
        ModelReading read = ModelReader.Read(part.Path!, part.Planned.File, reading.Limits, reading.Unit, cancel);
        return
        [
            .. read.Files.SelectMany(f => f.Parts).SelectMany(p => reading.Separate ? Examiner.Separated(p) : [p]).Select(p => p.Mesh),
        ];
    }
}
