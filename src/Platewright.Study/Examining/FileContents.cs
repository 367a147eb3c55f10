using System.Security.Cryptography;
using Platewright.Study.Store;

namespace Platewright.Study.Examining;

/// <summary>What files contain, as a hash; a file whose path, size and time are known is not read for it.</summary>
internal sealed class FileContents(ResultStore store, TimeProvider clock)
{
    /// <exception cref="IOException">The file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The user may not read it.</exception>
    public string HashOf(string path, FileStamp stamp)
    {
        if (store.RecogniseFile(stamp) is { } known) return known;
        using FileStream stream = File.OpenRead(path);
        string hash = Convert.ToHexStringLower(SHA256.HashData(stream));
        if (stamp.IsSettled(clock.GetUtcNow().UtcDateTime)) store.RememberFile(stamp, hash);
        return hash;
    }
}
