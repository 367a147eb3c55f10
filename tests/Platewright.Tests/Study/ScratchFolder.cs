namespace Platewright.Tests.Study;

/// <summary>A folder of its own for one test, gone afterwards.</summary>
internal sealed class ScratchFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("platewright-test-").FullName;

    public string this[params ReadOnlySpan<string> parts]
    {
        get
        {
            string path = System.IO.Path.Combine([Path, .. parts]);
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
            return path;
        }
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
