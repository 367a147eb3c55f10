using System.Security.Cryptography;
using System.Text.Json.Nodes;
using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Server.Shelf;

/// <summary>The studies of the app: a folder for each below the store's.</summary>
internal sealed class StudyShelf
{
    private const int MostNameLetters = 120;
    private const int MostIdLetters = 48;
    private const int IdBytes = 3;

    private readonly Lock _gate = new();
    private readonly TimeProvider _clock;

    public StudyShelf(string store, TimeProvider clock)
    {
        (Folder, _clock) = (Path.Combine(Path.GetFullPath(store), "studies"), clock);
        Directory.CreateDirectory(Folder);
    }

    public string Folder { get; }

    /// <summary>The one changed last first.</summary>
    public IReadOnlyList<KeptStudy> All() =>
    [
        .. Directory.EnumerateDirectories(Folder).Select(f => new KeptStudy(f, _gate, _clock)).Where(IsWhole)
            .OrderByDescending(s => s.About.Changed).ThenBy(s => s.Id, StringComparer.Ordinal),
    ];

    /// <summary>The study of that id; null where there is none.</summary>
    public KeptStudy? Find(string id)
    {
        // Asked for among what is there, so that no id can lead anywhere else.
        string? folder = Directory.EnumerateDirectories(Folder).FirstOrDefault(f => Path.GetFileName(f) == id);
        return folder is null || new KeptStudy(folder, _gate, _clock) is not { } study || !IsWhole(study) ? null : study;
    }

    /// <summary>An empty study.</summary>
    /// <exception cref="DescriptionException">The name has no letter or digit, or too many.</exception>
    public KeptStudy Create(string name)
    {
        string given = name.Trim();
        if (given.Length > MostNameLetters || !NameId.IsPossible(given))
            throw new DescriptionException(new DescriptionError($"expected a name of 1 to {MostNameLetters} letters, at least one of them a letter or digit.", Key: "name"));
        return Put(given, TomlJson.Write(new JsonObject { ["name"] = given }), openedFrom: null);
    }

    /// <summary>
    /// The study of a file or folder outside the app. Where it was opened before, that one: with the settings the file has now, unless they
    /// were edited in the app.
    /// </summary>
    /// <exception cref="DescriptionException">There is no such file or folder, or it cannot be read.</exception>
    public KeptStudy OpenFrom(string path)
    {
        string full = Path.GetFullPath(path), shown = path.Replace('\\', '/');
        bool folder = Directory.Exists(full);
        if (!folder && !(File.Exists(full) && full.EndsWith(".toml", StringComparison.OrdinalIgnoreCase)))
            throw new DescriptionException(new DescriptionError("expected a study file (.toml) or a folder of models.", shown));
        string name = folder ? Path.GetFileName(Path.TrimEndingDirectorySeparator(full)) : Path.GetFileNameWithoutExtension(full);
        string text = folder
            ? TomlJson.Write(new JsonObject { ["name"] = NameId.IsPossible(name) ? name : "study", ["folder"] = "." })
            : File.ReadAllText(full);
        if (All().FirstOrDefault(s => s.About.OpenedFrom == full) is not { } known) return Put(KeptStudy.NameIn(text) ?? name, text, full);
        string hash = KeptStudy.HashOf(text);
        bool edited = known.About.OpenedText != KeptStudy.HashOf(known.Text);
        if (!edited && known.About.OpenedText != hash) Reread(known, text);
        return known;
    }

    /// <summary>Takes the settings of the file a study was opened from in place of those edited in the app.</summary>
    public static void Reread(KeptStudy study, string text)
    {
        study.Write(text);
        study.Change(a => a with { OpenedText = KeptStudy.HashOf(text) });
    }

    /// <summary>Removes what killed processes left half done. Another app on this store may be at work: what is young stays.</summary>
    public void Sweep()
    {
        DateTime old = (_clock.GetUtcNow() - TimeSpan.FromHours(1)).UtcDateTime;
        string[] left =
        [
            .. Directory.EnumerateDirectories(Folder, ".*"),
            .. Directory.EnumerateDirectories(Folder).Select(f => Path.Combine(f, KeptStudy.IncomingFolder)).Where(Directory.Exists),
        ];
        foreach (string folder in left.Where(f => Directory.GetLastWriteTimeUtc(f) < old)) Directory.Delete(folder, recursive: true);
    }

    public void Delete(KeptStudy study)
    {
        lock (_gate)
        {
            // First out of sight at once, then piece by piece: a kill in between leaves nothing that looks like a study.
            string aside = Path.Combine(Folder, $".{study.Id}.gone");
            Directory.Move(study.Folder, aside);
            Directory.Delete(aside, recursive: true);
        }
    }

    private KeptStudy Put(string name, string text, string? openedFrom)
    {
        lock (_gate)
        {
            string slug = NameId.IsPossible(name) ? NameId.Of(name) : "study";
            string start = slug.Length <= MostIdLetters ? slug : slug[..MostIdLetters].TrimEnd('-');
            string id = $"{start}-{Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes))}";
            string aside = Path.Combine(Folder, $".{id}.new");
            Directory.CreateDirectory(aside);
            DateTimeOffset now = _clock.GetUtcNow();
            KeptStudy made = new(aside, _gate, _clock);
            made.Remember(new AboutStudy(
                openedFrom, openedFrom is null ? null : KeptStudy.HashOf(text), now, now, Revision: 0, Running: false, null, null, 0));
            made.Write(text);
            string folder = Path.Combine(Folder, id);
            Directory.Move(aside, folder);
            return new KeptStudy(folder, _gate, _clock);
        }
    }

    private static bool IsWhole(KeptStudy study) => !study.Id.StartsWith('.') && study.IsWhole;
}
