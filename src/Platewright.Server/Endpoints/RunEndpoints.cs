using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.Hosting;
using Platewright.Server.Answers;
using Platewright.Server.Runs;
using Platewright.Server.Shelf;
using Platewright.Study.Documents;

namespace Platewright.Server.Endpoints;

/// <summary>Starting, watching and stopping the run of a study.</summary>
internal static class RunEndpoints
{
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(150);

    public static void Map(IEndpointRouteBuilder api)
    {
        api.MapPost("/studies/{study}/run", (string study, StudyShelf shelf, StudyRuns runs) =>
                shelf.With(study, s => Answer.Of(runs.Start(s).Now.Document, StatusCodes.Status202Accepted)))
            .Named("startRun", "Starts the study, or goes on where it was stopped.").Produces<RunDocument>(StatusCodes.Status202Accepted).Refuses(404, 422);

        api.MapPost("/studies/{study}/stop", (string study, StudyShelf shelf, StudyRuns runs) =>
                shelf.With(study, s =>
                {
                    runs.Of(s)?.Stop();
                    return Answer.Of(Standing(s, runs).Document);
                }))
            .Named("stopRun", "Stops the run; what is finished is kept.").Produces<RunDocument>().Refuses(404);

        api.MapGet("/studies/{study}/progress", (string study, StudyShelf shelf, StudyRuns runs, IHostApplicationLifetime life, CancellationToken cancel) =>
                shelf.With(study, s => TypedResults.ServerSentEvents(Watch(s, runs, life.ApplicationStopping, cancel))))
            .Named("watchRun", "Server-sent events \"run\": how the run stands, at once and with each change, until the listener leaves.")
            .Produces<RunDocument>(StatusCodes.Status200OK, "text/event-stream").Refuses(404);
    }

    private static (RunDocument Document, int Version, StudyRun? Run) Standing(KeptStudy study, StudyRuns runs)
    {
        if (runs.Of(study) is not { } run) return (study.About.Ended ?? RunDocument.Idle, 0, null);
        (RunDocument document, int version) = run.Now;
        return (document, version, run);
    }

    private static async IAsyncEnumerable<SseItem<RunDocument>> Watch(
        KeptStudy study, StudyRuns runs, CancellationToken stopping, [EnumeratorCancellation] CancellationToken cancel)
    {
        using CancellationTokenSource either = CancellationTokenSource.CreateLinkedTokenSource(stopping, cancel);
        (RunDocument document, int version, StudyRun? run) = Standing(study, runs);
        yield return new SseItem<RunDocument>(document, "run");
        using PeriodicTimer timer = new(Look);
        while (await Ticks(timer, either.Token))
        {
            // A deleted study has no more to say.
            if (!Directory.Exists(study.Folder)) yield break;
            (RunDocument now, int at, StudyRun? on) = Standing(study, runs);
            if (at == version && ReferenceEquals(on, run)) continue;
            (version, run) = (at, on);
            yield return new SseItem<RunDocument>(now, "run");
        }
    }

    private static async Task<bool> Ticks(PeriodicTimer timer, CancellationToken cancel)
    {
        try
        {
            return await timer.WaitForNextTickAsync(cancel);
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }
}
