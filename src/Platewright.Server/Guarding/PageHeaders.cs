using Microsoft.AspNetCore.Http;

namespace Platewright.Server.Guarding;

/// <summary>What every answer says to browsers: run nothing but the page's own script, ask nobody else, stand in no other page.</summary>
internal static class PageHeaders
{
    /// <param name="scriptSource">The source of the page's one script, as <c>'sha256-…'</c>.</param>
    public static Func<HttpContext, RequestDelegate, Task> Of(string scriptSource)
    {
        string policy =
            $"default-src 'none'; script-src {scriptSource}; style-src 'unsafe-inline'; img-src data: blob:; font-src data:; " +
            "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
        return (context, next) =>
        {
            IHeaderDictionary headers = context.Response.Headers;
            headers.ContentSecurityPolicy = policy;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "no-referrer";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            headers.CacheControl = "no-store";
            return next(context);
        };
    }
}
