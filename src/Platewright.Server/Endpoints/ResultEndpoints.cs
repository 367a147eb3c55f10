using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Platewright.Formats.Toml;
using Platewright.Report;
using Platewright.Server.Answers;
using Platewright.Server.Runs;
using Platewright.Server.Shelf;
using Platewright.Study.Describing;
using Platewright.Study.Documents;
using Platewright.Study.Output;
using Platewright.Study.Pipeline;

namespace Platewright.Server.Endpoints;

/// <summary>What a study found: the document, everything the command writes, what if, and two studies side by side.</summary>
internal static class ResultEndpoints
{
    private const string Json = "application/json";

    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapGet("/studies/{study}/result", (string study, StudyShelf shelf) =>
                shelf.With(study, s => File.Exists(s.ResultPath) ? Results.File(s.ResultPath, Json) : NoResult()))
            .Named("readResult", "The document of the last finished run: study.json.").Produces<StudyDocument>().Refuses(404);

        api.MapGet("/studies/{study}/export/{file}", Export)
            .Named("exportResult", "study.json, parts.csv or report.html as the command writes them, or study.toml; on request with pictures only and with names hidden.")
            .Produces(StatusCodes.Status200OK, contentType: "application/octet-stream").Refuses(404, 422);

        api.MapPost("/studies/{study}/what-if", (string study, WhatIfDocument what, StudyShelf shelf, StudyRuns runs, CancellationToken cancel) =>
                shelf.With(study, s =>
                {
                    string text = Changed(s.Text, what.Changes ?? new Dictionary<string, double>());
                    StudyDocument found = runs.Compute(StudySource.OfText(text, KeptStudy.SettingsFile, s.Base, cancel), Sharing.Everything, cancel);
                    return found.Sizing is { } sizing ? Answer.Of(sizing) : Refused.Missing("No project could be judged, so there is nothing to choose.");
                }))
            .Named("askWhatIf", "The choice with other assumptions; nothing is remembered.").Produces<SizingDocument>().Refuses(404, 422);

        api.MapPost("/studies/{study}/assume", (string study, WhatIfDocument what, StudyShelf shelf, CancellationToken cancel) =>
                shelf.With(study, s =>
                {
                    string text = Changed(s.Text, what.Changes ?? new Dictionary<string, double>());
                    _ = StudySource.OfText(text, KeptStudy.SettingsFile, s.Base, cancel);
                    s.Write(text);
                    return Answer.Of(s.Describe(null));
                }))
            .Named("assume", "Keeps other assumptions in the study's settings.").Produces<KeptStudyDocument>().Refuses(404, 422);

        api.MapGet("/compare", (string first, string second, StudyShelf shelf) =>
                shelf.With(first, a => shelf.With(second, b => (ReadResult(a), ReadResult(b)) is ({ } one, { } other)
                    ? Answer.Of(StudyComparison.Of(one, other))
                    : NoResult())))
            .Named("compareStudies", "What differs between two studies.").Produces<ComparisonDocument>().Refuses(404);
    }

    private static IResult Export(
        string study, string file, bool? pictures_only, bool? hide_names, StudyShelf shelf, StudyRuns runs, CancellationToken cancel) => shelf.With(study, s =>
    {
        if (file == KeptStudy.SettingsFile) return Results.Text(s.Text, "application/toml");
        if (file is not ("study.json" or "parts.csv" or "report.html"))
            return Refused.Missing($"\"{file}\" is not one of study.json, parts.csv, report.html and study.toml.");
        Sharing sharing = new(WithModels: pictures_only is not true, HideNames: hide_names is true);
        StudyDocument? found = sharing == Sharing.Everything ? ReadResult(s) : !File.Exists(s.ResultPath) ? null : runs.Compute(s.Open(cancel), sharing, cancel);
        if (found is null) return NoResult();
        return file switch
        {
            "study.json" => Written(Json, stream => StudyJson.Write(found, stream)),
            "parts.csv" => Written("text/csv", stream => PartsCsv.Write(found, stream)),
            _ => Results.Text(ReportPage.Render(found), "text/html"),
        };

        IResult Written(string type, Action<Stream> write)
        {
            MemoryStream stream = new();
            write(stream);
            return Results.File(stream.ToArray(), type, file);
        }
    });

    private static StudyDocument? ReadResult(KeptStudy study)
    {
        if (!File.Exists(study.ResultPath)) return null;
        using FileStream file = File.OpenRead(study.ResultPath);
        return JsonSerializer.Deserialize<StudyDocument>(file, DocumentJson.Compact);
    }

    private static IResult NoResult() => Refused.Missing("This study has no result yet; start it first.");

    /// <summary>The settings with some numbers changed; a range that no longer holds its value is dropped.</summary>
    private static string Changed(string text, IReadOnlyDictionary<string, double> changes)
    {
        JsonObject settings = TomlJson.Read(text, KeptStudy.SettingsFile);
        foreach ((string key, double value) in changes)
        {
            if (key.Split('.') is not ["cost", { } name])
                throw new DescriptionException(new DescriptionError("expected an assumption, as cost.energy_per_kwh.", Key: key));
            if (settings["cost"] is not JsonObject cost) settings["cost"] = cost = [];
            cost[name] = value;
            if (cost["range"] is JsonObject ranges && ranges[name] is JsonArray { Count: 2 } range
                && !(value >= range[0]!.GetValue<double>() && value <= range[1]!.GetValue<double>()))
                ranges.Remove(name);
        }
        return TomlJson.Write(settings);
    }
}
