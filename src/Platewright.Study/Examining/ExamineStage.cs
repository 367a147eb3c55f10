using Platewright.Formats;
using Platewright.Study.Pipeline;
using Platewright.Study.Store;

namespace Platewright.Study.Examining;

/// <summary>Files read and examined, each once for its content: the first stage of everything.</summary>
/// <param name="store">Null examines everything anew.</param>
internal sealed class ExamineStage(StageRunner runner, ResultStore? store)
{
    private const string NotReadable = "it cannot be read";

    private readonly MemoryGate _gate = new(MemoryGate.UsualBytes);

    /// <summary>Every file, in the order given.</summary>
    public IReadOnlyList<Examination> Run(IReadOnlyList<FileToExamine> files, IProgressListener progress, CancellationToken cancel)
    {
        progress.Begin("Reading models", files.Count);
        return ParallelWork.Map(files, f => f.Path.ShownAs, file => Run(file, cancel), progress, cancel);
    }

    private Examination Run(FileToExamine file, CancellationToken cancel)
    {
        ModelPath path = file.Path;
        try
        {
            FileStamp stamp = FileStamp.Of(path.Path);
            return _gate.Through(stamp.Length, () => Kept(path.Path, file.Options, stamp, cancel)).Named(path.Path, path.ShownAs);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            string message = File.Exists(path.Path) ? $"{NotReadable} ({e.Message})" : "there is no such file or folder";
            return new Examination([], [new UnusableFile(path.ShownAs, null, $"{path.ShownAs}: {message}.")]);
        }
        catch (Exception e) when (Fault.Is(e))
        {
            return new Examination([], [Fault.Of(path.ShownAs, e)]);
        }
    }

    private Examination Kept(string path, ExamineOptions options, FileStamp stamp, CancellationToken cancel)
    {
        if (store is null) return Examiner.Examine(path, options, cancel);
        string hash = new FileContents(store, TimeProvider.System).HashOf(path, stamp);
        string extension = Path.GetExtension(path).ToLowerInvariant();
        return runner.Run(
            Stage.Examine, [hash, extension], options.ToCanonical(), StoredJson.Default.Examination,
            () => Unchanged(path, stamp, Examiner.Examine(path, options, cancel)));
    }

    // What was computed from a file that changed meanwhile must not be kept under its old content.
    private static Examination Unchanged(string path, FileStamp stamp, Examination found) =>
        FileStamp.Of(path) == stamp ? found : throw new IOException("it changed while it was read; run the study again");
}
