using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;
using Platewright.Server.Answers;
using Platewright.Server.Shelf;
using Platewright.Server.Uploads;
using Platewright.Study.Documents;

namespace Platewright.Server.Endpoints;

/// <summary>The model files of a study.</summary>
internal static class FileEndpoints
{
    public static void Map(IEndpointRouteBuilder api, LocalAppSettings settings)
    {
        api.MapGet("/studies/{study}/files", (string study, StudyShelf shelf) => shelf.With(study, s => Answer.Of(Describe(s))))
            .Named("listFiles", "The model files put into a study.").Produces<FilesDocument>().Refuses(404);

        api.MapPost("/studies/{study}/files", async (string study, HttpRequest request, StudyShelf shelf, CancellationToken cancel) =>
            {
                if (shelf.Find(study) is not { } kept) return StudyEndpoints.Unknown(study);
                if (kept.About.OpenedFrom is { } outside)
                {
                    string where = outside.Replace('\\', '/');
                    return Refused.Of(StatusCodes.Status409Conflict, $"This study reads its models from {where}: put them there and run it, or begin a study of the app's own.");
                }
                UploadFolder upload = new(kept, settings.MostUploadFiles);
                try
                {
                    await foreach ((string path, Stream content) in Sent(request, cancel)) await upload.Take(path, content, cancel);
                }
                finally
                {
                    // What came before a lost connection is kept, and known to the settings.
                    if (upload.Document.Kept.Count > 0) ProjectAdoption.Update(kept);
                }
                return Answer.Of(upload.Document);
            })
            .Named("sendFiles", "Takes model files, or zips of them, as multipart/form-data; a file's name is its path in the study.")
            .Accepts<IFormFileCollection>("multipart/form-data").Produces<UploadDocument>().Refuses(400, 404, 409, 413)
            .WithMetadata(new LargeUpload(settings.MostUploadBytes));

        api.MapDelete("/studies/{study}/files", (string study, string path, StudyShelf shelf) => shelf.With(study, s =>
            {
                if (s.About.OpenedFrom is not null || s.Files.FirstOrDefault(f => f == path) is not { } known)
                    return Refused.Missing($"The study has no file \"{path}\" of its own.");
                File.Delete(InsidePath.Combine(s.Models, known));
                ProjectAdoption.Update(s);
                return Answer.Of(Describe(s));
            }))
            .Named("deleteFile", "Takes a model file out of the study.").Produces<FilesDocument>().Refuses(404);
    }

    private static FilesDocument Describe(KeptStudy study) =>
        new([.. study.Files.Select(f => new KeptFileDocument(f, new FileInfo(Path.Combine(study.Models, f)).Length))]);

    /// <summary>The files of a multipart body, one after another and never wholly in memory.</summary>
    private static async IAsyncEnumerable<(string Path, Stream Content)> Sent(
        HttpRequest request, [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancel)
    {
        bool multipart = MediaTypeHeaderValue.TryParse(request.ContentType, out MediaTypeHeaderValue? type)
            && type.MediaType.Equals("multipart/form-data", StringComparison.OrdinalIgnoreCase);
        if (!multipart || HeaderUtilities.RemoveQuotes(type!.Boundary).Value is not { Length: > 0 } boundary)
            throw new BadHttpRequestException("expected multipart/form-data");
        MultipartReader reader = new(boundary, request.Body);
        while (await Next(reader, cancel) is { } section)
        {
            if (ContentDispositionHeaderValue.TryParse(section.ContentDisposition, out ContentDispositionHeaderValue? named)
                && named.IsFileDisposition())
                yield return (HeaderUtilities.RemoveQuotes(named.FileNameStar.HasValue ? named.FileNameStar : named.FileName).ToString(), section.Body);
        }
    }

    private static async Task<MultipartSection?> Next(MultipartReader reader, CancellationToken cancel)
    {
        try
        {
            return await reader.ReadNextSectionAsync(cancel);
        }
        catch (Exception e) when (e is InvalidDataException or IOException and not BadHttpRequestException)
        {
            throw new BadHttpRequestException($"the files came broken ({e.Message.TrimEnd('.')})", e);
        }
    }

    private sealed record LargeUpload(long Bytes) : IRequestSizeLimitMetadata
    {
        public long? MaxRequestBodySize => Bytes;
    }
}
