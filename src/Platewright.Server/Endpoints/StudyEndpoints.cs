using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Platewright.Server.Answers;
using Platewright.Server.Runs;
using Platewright.Server.Shelf;
using Platewright.Study.Documents;

namespace Platewright.Server.Endpoints;

/// <summary>The studies on the shelf: list, begin, look, take away.</summary>
internal static class StudyEndpoints
{
    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapGet("/studies", (StudyShelf shelf, StudyRuns runs) =>
                Answer.Of(new StudiesDocument([.. shelf.All().Select(s => s.Describe(runs.Of(s)?.Now.Document))])))
            .Named("listStudies", "The studies the app keeps, the one changed last first.").Produces<StudiesDocument>();

        api.MapPost("/studies", (NewStudyDocument wanted, StudyShelf shelf) =>
            {
                KeptStudy made = shelf.Create(wanted.Name ?? "");
                return Answer.Of(made.Describe(null), StatusCodes.Status201Created);
            })
            .Named("beginStudy", "Begins an empty study.").Produces<KeptStudyDocument>(StatusCodes.Status201Created).Refuses(422);

        api.MapGet("/studies/{study}", (string study, StudyShelf shelf, StudyRuns runs) =>
                shelf.With(study, s => Answer.Of(s.Describe(runs.Of(s)?.Now.Document))))
            .Named("readStudy", "One study and how its run stands.").Produces<KeptStudyDocument>().Refuses(404);

        api.MapDelete("/studies/{study}", async (string study, StudyShelf shelf, StudyRuns runs) =>
            {
                if (shelf.Find(study) is not { } kept) return Unknown(study);
                if (runs.Of(kept) is { } run)
                {
                    run.Stop();
                    await run.Ended;
                }
                shelf.Delete(kept);
                return Results.NoContent();
            })
            .Named("deleteStudy", "Deletes a study with its files. Files outside the app stay.").Produces(StatusCodes.Status204NoContent).Refuses(404);
    }

    /// <summary>Does something with a study, or says that there is none.</summary>
    public static IResult With(this StudyShelf shelf, string id, Func<KeptStudy, IResult> action) =>
        shelf.Find(id) is { } study ? action(study) : Unknown(id);

    public static IResult Unknown(string id) => Refused.Missing($"There is no study \"{id}\" here; it may have been deleted.");
}
