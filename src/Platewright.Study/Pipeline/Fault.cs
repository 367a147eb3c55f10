using Platewright.Formats;
using Platewright.Study.Store;

namespace Platewright.Study.Pipeline;

/// <summary>
/// A fault of the program on one file or part. It costs that one alone: it is listed with a sentence, nothing is kept for it, and
/// the rest of the work goes on.
/// </summary>
internal static class Fault
{
    /// <summary>True for what is a fault, not a cancellation and not a store that fails everything.</summary>
    public static bool Is(Exception e) => e is not (OperationCanceledException or StoreException or OutOfMemoryException);

    public static UnusableFile Of(string file, Exception e) => new(
        file, null, $"{file}: the program failed on it ({e.GetType().Name}: {e.Message.TrimEnd('.')}); please report this with the file.");
}
