using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Server.Answers;
using Platewright.Server.Shelf;
using Platewright.Study.Documents;
using Platewright.Study.Pipeline;

namespace Platewright.Server.Endpoints;

/// <summary>What a study asks: its study file, as a form's value and as text.</summary>
internal static class SettingsEndpoints
{
    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapGet("/studies/{study}/settings", (string study, StudyShelf shelf, Library library) =>
                shelf.With(study, s => Answer.Of(Describe(s, s.Text, library))))
            .Named("readSettings", "The study file, as a value and as text.").Produces<SettingsDocument>().Refuses(404, 422);

        api.MapPut("/studies/{study}/settings", (string study, NewSettingsDocument wanted, StudyShelf shelf, Library library, CancellationToken cancel) =>
                shelf.With(study, s =>
                {
                    string text = wanted.Text ?? TomlJson.Write(wanted.Settings ?? []);
                    if (!IsEmpty(text)) _ = StudySource.OfText(text, KeptStudy.SettingsFile, s.Base, cancel);
                    s.Write(text);
                    return Answer.Of(Describe(s, text, library));
                }))
            .Named("changeSettings", "Takes other settings; nothing is changed where they are not right.").Produces<SettingsDocument>().Refuses(404, 422);

        api.MapPost("/studies/{study}/reread", (string study, StudyShelf shelf, Library library) =>
                shelf.With(study, s =>
                {
                    if (s.About.OpenedFrom is not { } path || !File.Exists(path))
                        return Refused.Missing("This study was not opened from a file that is still there.");
                    StudyShelf.Reread(s, File.ReadAllText(path));
                    return Answer.Of(Describe(s, s.Text, library));
                }))
            .Named("rereadSettings", "Takes the settings of the file the study was opened from, in place of those edited in the app.")
            .Produces<SettingsDocument>().Refuses(404, 422);
    }

    /// <summary>Whether a study holds nothing yet, which is no mistake while it is being put together.</summary>
    public static bool IsEmpty(string text)
    {
        JsonObject settings = TomlJson.Read(text, KeptStudy.SettingsFile);
        return settings["project"] is not JsonArray { Count: > 0 } && settings["folder"] is null;
    }

    private static SettingsDocument Describe(KeptStudy study, string text, Library library)
    {
        IReadOnlyList<FieldErrorDocument> faults = [];
        try
        {
            if (!IsEmpty(text)) _ = StudySource.OfText(text, KeptStudy.SettingsFile, study.Base, CancellationToken.None);
        }
        catch (DescriptionException e)
        {
            faults = Refused.FieldsOf(e);
        }
        return new SettingsDocument(ReadOrNothing(text), text, Choices(study, text, library), faults);
    }

    // A text that is no TOML is shown as text alone.
    private static JsonObject ReadOrNothing(string text)
    {
        try
        {
            return TomlJson.Read(text, KeptStudy.SettingsFile);
        }
        catch (DescriptionException)
        {
            return [];
        }
    }

    private static MachineChoiceDocument[] Choices(KeptStudy study, string text, Library library)
    {
        string toOwn = Path.GetRelativePath(study.Base, library.Machines.Folder).Replace('\\', '/');
        List<MachineChoiceDocument> choices =
        [
            .. MachineCatalog.Bundled.Select(m => new MachineChoiceDocument(m.Id, m.Name, Summaries.Of(m))),
            .. library.Machines.All().Select(m => new MachineChoiceDocument($"{toOwn}/{m.Id}.toml", m.Name, Summaries.Of(m))),
        ];
        foreach (string named in (ReadOrNothing(text)["machines"] as JsonArray ?? []).Select(n => n?.ToString() ?? ""))
        {
            if (choices.Any(c => c.Value == named || c.Name == named)) continue;
            choices.Add(new MachineChoiceDocument(named, Path.GetFileNameWithoutExtension(named), "a machine file of this study"));
        }
        return [.. choices];
    }
}
