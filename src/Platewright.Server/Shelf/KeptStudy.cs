using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Platewright.Formats;
using Platewright.Formats.Toml;
using Platewright.Study.Documents;
using Platewright.Study.Output;
using Platewright.Study.Pipeline;

namespace Platewright.Server.Shelf;

/// <summary>
/// One study of the app: a folder with its settings, its model files, what is remembered of it, and its last result. Every file is
/// written beside its place and renamed, so that a kill at any moment leaves the old or the new one.
/// </summary>
internal sealed class KeptStudy
{
    public const string SettingsFile = "study.toml";
    public const string ModelsFolder = "models";
    public const string IncomingFolder = "incoming";
    private const string AboutFile = "about.json";
    private const string ResultFile = "study.json";

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    private readonly Lock _gate;
    private readonly TimeProvider _clock;

    /// <param name="folder">Its full path; its name is the id.</param>
    /// <param name="gate">Held while what is remembered changes.</param>
    /// <param name="clock">Says when something changed.</param>
    public KeptStudy(string folder, Lock gate, TimeProvider clock)
    {
        (Folder, _gate, _clock) = (folder, gate, clock);
        Id = Path.GetFileName(folder);
    }

    public string Id { get; }

    public string Folder { get; }

    public string Models => Path.Combine(Folder, ModelsFolder);

    /// <summary>study.json of the last finished run; it may be absent.</summary>
    public string ResultPath => Path.Combine(Folder, "result", ResultFile);

    /// <summary>Whether what makes a study is there.</summary>
    public bool IsWhole => File.Exists(Path.Combine(Folder, AboutFile)) && File.Exists(Path.Combine(Folder, SettingsFile));

    public string Text => File.ReadAllText(Path.Combine(Folder, SettingsFile));

    public AboutStudy About => JsonSerializer.Deserialize<AboutStudy>(File.ReadAllBytes(Path.Combine(Folder, AboutFile)), DocumentJson.Compact)!;

    /// <summary>Where the paths in its settings start.</summary>
    public string Base => About.OpenedFrom switch
    {
        null => Folder,
        { } path when Directory.Exists(path) => path,
        { } path => Path.GetDirectoryName(path)!,
    };

    /// <summary>What it is called, whatever else is wrong in its settings.</summary>
    public string Name => NameIn(Text) ?? Id;

    /// <summary>Its model files, as paths below <see cref="Models"/>.</summary>
    public IReadOnlyList<string> Files => Directory.Exists(Models) ? ModelFolder.List(Models).Files : [];

    /// <summary>What to study.</summary>
    /// <exception cref="DescriptionException">Its settings are not right.</exception>
    public StudySource Open(CancellationToken cancel) => StudySource.OfText(Text, SettingsFile, Base, cancel);

    /// <summary>Takes other settings.</summary>
    public void Write(string text)
    {
        lock (_gate)
        {
            AsideFile.Write(Path.Combine(Folder, SettingsFile), stream => stream.Write(Utf8.GetBytes(text)));
            Touch();
        }
    }

    /// <summary>Notes that settings or files changed.</summary>
    public void Touch() => Change(a => a with { Revision = a.Revision + 1, Changed = _clock.GetUtcNow() });

    public void Change(Func<AboutStudy, AboutStudy> change)
    {
        lock (_gate)
        {
            Remember(change(About));
        }
    }

    public void Remember(AboutStudy about) =>
        AsideFile.Write(Path.Combine(Folder, AboutFile), stream => JsonSerializer.Serialize(stream, about, DocumentJson.Compact));

    public static string HashOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Utf8.GetBytes(text)));

    /// <summary>The name that settings give; null where they are not right or give none.</summary>
    public static string? NameIn(string text)
    {
        try
        {
            return TomlJson.Read(text, SettingsFile)["name"]?.ToString();
        }
        catch (DescriptionException)
        {
            return null;
        }
    }

    /// <param name="run">How its run stands now, where one is going on.</param>
    public KeptStudyDocument Describe(RunDocument? run)
    {
        AboutStudy about = About;
        return new KeptStudyDocument(
            Id, Name, about.OpenedFrom?.Replace('\\', '/'), about.OpenedText is { } opened && opened != HashOf(Text), Files.Count, about.Changed,
            run ?? about.Ended ?? RunDocument.Idle, about.Result is { } r ? r with { Current = about.ResultRevision == about.Revision } : null);
    }
}
