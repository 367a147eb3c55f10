using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Platewright.Study.Documents;

namespace Platewright.Server.Answers;

/// <summary>Answers in the JSON of our documents, and what the OpenAPI description says of them.</summary>
internal static class Answer
{
    public static IResult Of<T>(T document, int status = StatusCodes.Status200OK) =>
        Results.Json(document, DocumentJson.Compact, statusCode: status);

    public static RouteHandlerBuilder Named(this RouteHandlerBuilder route, string name, string summary) =>
        route.WithName(name).WithSummary(summary);

    /// <summary>Says which refusals a request may meet.</summary>
    public static RouteHandlerBuilder Refuses(this RouteHandlerBuilder route, params ReadOnlySpan<int> statuses)
    {
        foreach (int status in statuses) route.Produces<RefusalDocument>(status);
        return route;
    }
}
