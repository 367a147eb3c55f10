using Microsoft.AspNetCore.Http;
using Platewright.Server.Answers;

namespace Platewright.Server.Guarding;

/// <summary>
/// Answers only who asks this machine by a loopback name, and only pages of its own. A foreign Host is how a name that was rebound to the
/// loopback address looks; a foreign Origin or fetch site is another page that posts here.
/// </summary>
internal static class SameOriginGuard
{
    private static readonly string[] Names = ["127.0.0.1", "localhost"];

    public static async Task Run(HttpContext context, RequestDelegate next)
    {
        string? wrong = Refusal(context.Request, context.Connection.LocalPort);
        if (wrong is null) await next(context);
        else await Refused.Of(StatusCodes.Status403Forbidden, wrong).ExecuteAsync(context);
    }

    /// <summary>Why a request is not answered; null where it is.</summary>
    internal static string? Refusal(HttpRequest request, int port)
    {
        HostString host = request.Host;
        if (!Names.Contains(host.Host, StringComparer.OrdinalIgnoreCase) || (host.Port ?? 80) != port)
            return $"This app answers only under http://localhost:{port}; it was asked as \"{Shown(host.Value)}\".";
        string own = $"http://{host.Value}";
        if (request.Headers.Origin is { Count: > 0 } origin && !string.Equals(origin, own, StringComparison.OrdinalIgnoreCase))
            return "Another page asked; this app answers only its own pages.";
        // Browsers that tell where a request comes from: a link may lead here, a foreign page may not fetch or post.
        string? site = request.Headers["Sec-Fetch-Site"];
        bool foreign = site is not null and not ("same-origin" or "none");
        return foreign && !(HttpMethods.IsGet(request.Method) && request.Headers["Sec-Fetch-Mode"] == "navigate")
            ? "Another page asked; this app answers only its own pages."
            : null;
    }

    private static string Shown(string? text) => text is null ? "" : text.Length <= 80 ? text : $"{text[..80]}…";
}
