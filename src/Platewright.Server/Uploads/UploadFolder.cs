using System.IO.Compression;
using System.Security.Cryptography;
using Platewright.Formats;
using Platewright.Server.Shelf;
using Platewright.Study.Documents;

namespace Platewright.Server.Uploads;

/// <summary>
/// Takes files into a study. Each is written beside its place and renamed. A file of the same content is kept once; one of another content
/// under a name that is taken gets a number, so that nothing is written over. A zip is opened and its models taken as if they had been sent one by one.
/// </summary>
internal sealed class UploadFolder(KeptStudy study, int mostFiles)
{
    private const int CopyBytes = 1 << 16;

    private readonly List<string> _kept = [];
    private readonly List<UnusableDocument> _refused = [];

    public UploadDocument Document => new(_kept, _refused);

    /// <param name="sent">The path the sender gives it.</param>
    /// <param name="content">Read to its end.</param>
    /// <param name="cancel">Stops it; what is half written is removed.</param>
    public async Task Take(string sent, Stream content, CancellationToken cancel)
    {
        if (!InsidePath.TryClean(sent, out string? path, out string? wrong))
        {
            Refuse(sent, $"{wrong}; give it another name");
            return;
        }
        if (!ModelFolder.IsModelName(path))
        {
            // Whole folders are dropped: what is hidden or no model is passed over with a word, not an error.
            Refuse(path, $"no model file ({ModelFolder.KnownExtensions}), so it is left out");
            return;
        }
        if (_kept.Count + _refused.Count >= mostFiles)
        {
            Refuse(path, $"more than {mostFiles} files at once; send the rest after them");
            return;
        }
        string aside = Aside();
        try
        {
            await using (FileStream file = new(aside, FileMode.CreateNew, FileAccess.Write, FileShare.None, CopyBytes, useAsync: true))
                await content.CopyToAsync(file, cancel);
            if (Path.GetExtension(path).Equals(".zip", StringComparison.OrdinalIgnoreCase)) await OpenPack(path, aside, cancel);
            else Keep(path, aside);
        }
        finally
        {
            File.Delete(aside);
        }
    }

    private async Task OpenPack(string path, string packed, CancellationToken cancel)
    {
        long left = ReadLimits.Default.UnpackedBytes;
        try
        {
            await using FileStream file = File.OpenRead(packed);
            await using ZipArchive pack = await ZipArchive.CreateAsync(file, ZipArchiveMode.Read, leaveOpen: true, null, cancel);
            ZipArchiveEntry[] models = [.. pack.Entries.Where(e => !e.FullName.EndsWith('/') && ModelFolder.IsModelName(e.FullName))];
            if (models.Length == 0) Refuse(path, $"it holds no model files ({ModelFolder.KnownExtensions})");
            string shared = SharedFolder(models);
            foreach (ZipArchiveEntry entry in models)
            {
                string inside = entry.FullName.Replace('\\', '/')[shared.Length..];
                string named = $"{path}/{inside}";
                if (!InsidePath.TryClean(inside, out string? clean, out string? wrong)) Refuse(named, $"{wrong}; give it another name");
                else if (_kept.Count + _refused.Count >= mostFiles) Refuse(named, $"more than {mostFiles} files at once");
                else if ((left = await Unpack(entry, clean, named, left, cancel)) <= 0) return;
            }
        }
        catch (InvalidDataException e)
        {
            Refuse(path, $"it cannot be opened as a zip ({e.Message.TrimEnd('.')}); pack it anew");
        }
    }

    /// <returns>How many bytes may still be unpacked; 0 or less where that was too much.</returns>
    private async Task<long> Unpack(ZipArchiveEntry entry, string path, string named, long left, CancellationToken cancel)
    {
        string aside = Aside();
        try
        {
            await using (Stream content = await entry.OpenAsync(cancel))
            await using (FileStream file = new(aside, FileMode.CreateNew, FileAccess.Write, FileShare.None, CopyBytes, useAsync: true))
            {
                // What an entry says of its size may be a lie: only what really comes out counts.
                byte[] lot = new byte[CopyBytes];
                int read;
                while ((read = await content.ReadAsync(lot, cancel)) > 0)
                {
                    if ((left -= read) <= 0)
                    {
                        Refuse(named, $"the zip unpacks to more than {ReadLimits.Default.UnpackedBytes >> 20} MiB; send it in smaller lots");
                        return 0;
                    }
                    await file.WriteAsync(lot.AsMemory(0, read), cancel);
                }
            }
            Keep(path, aside);
            return left;
        }
        finally
        {
            File.Delete(aside);
        }
    }

    /// <summary>The one folder that all lie in, with its slash: packing a folder puts its name before everything.</summary>
    private static string SharedFolder(ZipArchiveEntry[] models)
    {
        string[] first = [.. models.Select(e => e.FullName.Replace('\\', '/')).Select(n => n.Contains('/', StringComparison.Ordinal) ? n[..(n.IndexOf('/', StringComparison.Ordinal) + 1)] : "").Distinct(StringComparer.Ordinal)];
        return first.Length == 1 ? first[0] : "";
    }

    private void Keep(string path, string aside)
    {
        byte[] content = Hash(aside);
        string free = path;
        for (int number = 2; ; number++)
        {
            string full = InsidePath.Combine(study.Models, free);
            if (!Path.Exists(full))
            {
                Directory.CreateDirectory(Path.GetDirectoryName(full)!);
                File.Move(aside, full);
                break;
            }
            if (File.Exists(full) && Hash(full).AsSpan().SequenceEqual(content)) break;
            string extension = Path.GetExtension(path);
            free = $"{path[..^extension.Length]} ({number}){extension}";
        }
        _kept.Add(free);
    }

    private string Aside()
    {
        string folder = Path.Combine(study.Folder, KeptStudy.IncomingFolder);
        Directory.CreateDirectory(folder);
        return Path.Combine(folder, $"{Guid.NewGuid():N}.part");
    }

    private static byte[] Hash(string path)
    {
        using FileStream file = File.OpenRead(path);
        return SHA256.HashData(file);
    }

    private void Refuse(string file, string why) => _refused.Add(new UnusableDocument(file, $"{file}: {why}."));
}
