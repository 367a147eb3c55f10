using System.Text;
using Platewright.Formats.Toml;
using Platewright.Study.Output;

namespace Platewright.Server.Shelf;

/// <summary>The user's own machines or recipes: a TOML file for each in a folder of the store. Only what can be read is kept.</summary>
/// <typeparam name="T">What a file describes.</typeparam>
/// <param name="folder">Its full path.</param>
/// <param name="parse">Reads a text; the second argument is how errors name it.</param>
/// <param name="idOf">What a file is called.</param>
internal sealed class OwnDescriptions<T>(string folder, Func<string, string, T> parse, Func<T, string> idOf)
    where T : class
{
    private const string Extension = ".toml";

    public string Folder { get; } = folder;

    /// <summary>Those that can be read, by id. One that was broken by hand outside the app is passed over.</summary>
    public IEnumerable<T> All()
    {
        if (!Directory.Exists(Folder)) yield break;
        foreach (string path in Directory.EnumerateFiles(Folder, $"*{Extension}").Order(StringComparer.Ordinal))
        {
            T? found = null;
            try
            {
                found = parse(File.ReadAllText(path), Path.GetFileName(path));
            }
            catch (DescriptionException)
            {
                // Shown as text when it is asked for by name.
            }
            if (found is not null) yield return found;
        }
    }

    /// <summary>The text of one; null where there is none.</summary>
    public string? TextOf(string id) => Find(id) is { } path ? File.ReadAllText(path) : null;

    /// <summary>Keeps a new one, or one in place of <paramref name="before"/>.</summary>
    /// <exception cref="DescriptionException">It is not right, or its name is taken.</exception>
    public T Keep(string text, string? before)
    {
        T value = parse(text, $"{before ?? "new"}{Extension}");
        string id = idOf(value);
        if (id != before && Find(id) is not null)
            throw new DescriptionException(new DescriptionError($"another one is already called \"{id}\"; give it another name.", Key: "name"));
        AsideFile.Write(Path.Combine(Folder, id + Extension), stream => stream.Write(Encoding.UTF8.GetBytes(text)));
        if (before is not null && before != id && Find(before) is { } old) File.Delete(old);
        return value;
    }

    public bool Delete(string id)
    {
        if (Find(id) is not { } path) return false;
        File.Delete(path);
        return true;
    }

    private string? Find(string id) => !Directory.Exists(Folder)
        ? null
        : Directory.EnumerateFiles(Folder, $"*{Extension}").FirstOrDefault(p => Path.GetFileNameWithoutExtension(p) == id);
}
