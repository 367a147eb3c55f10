namespace Platewright.Study.Output;

/// <summary>Writes a file beside its place and renames it: whoever looks sees the old file or the whole new one.</summary>
public static class AsideFile
{
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        string full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        string aside = $"{full}.{Environment.ProcessId}.part";
        try
        {
            using (FileStream stream = new(aside, FileMode.Create, FileAccess.Write, FileShare.None)) write(stream);
            File.Move(aside, full, overwrite: true);
        }
        finally
        {
            File.Delete(aside);
        }
    }
}
