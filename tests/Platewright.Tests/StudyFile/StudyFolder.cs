using Platewright.Study;

namespace Platewright.Tests.StudyFile;

/// <summary>A folder for one test, with empty files where models would be: planning does not open them.</summary>
internal sealed class StudyFolder : IDisposable
{
    private static readonly string[] Extensions = [".stl", ".obj", ".3mf", ".zip"];

    public string Root { get; } = Directory.CreateTempSubdirectory("platewright-").FullName;

    public static IReadOnlyList<string> Models(string folder) =>
    [
        .. Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
            .Where(f => Extensions.Contains(Path.GetExtension(f), StringComparer.OrdinalIgnoreCase)),
    ];

    public void Add(string name, string text)
    {
        string path = Path.Combine(Root, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    public void AddModels(params string[] names)
    {
        foreach (string name in names) Add(name, "");
    }

    public StudyPlan Read(string study)
    {
        Add("study.toml", study);
        return Platewright.Study.StudyFile.Read(Path.Combine(Root, "study.toml"), Models);
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
