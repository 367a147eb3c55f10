using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;
using Platewright.Formats.Toml;
using Platewright.Study.Store;

namespace Platewright.Server.Answers;

/// <summary>Turns what went wrong into a sentence: for nonsense, a missing folder or a full disk, and at last for a fault of ours.</summary>
internal static partial class RefusalHandler
{
    public static async Task Run(HttpContext context, RequestDelegate next, ILogger log)
    {
        try
        {
            await next(context);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // Nobody listens any more.
        }
        catch (Exception e) when (!context.Response.HasStarted)
        {
            await Answer(e, log).ExecuteAsync(context);
        }
    }

    private static IResult Answer(Exception e, ILogger log)
    {
        switch (e)
        {
            case DescriptionException wrong:
                return Refused.Of(wrong);
            case BadHttpRequestException bad:
                return Refused.Of(bad.StatusCode, bad.StatusCode == StatusCodes.Status413PayloadTooLarge
                    ? "That is more than the app takes at once; send it in smaller lots."
                    : $"The request cannot be read: {bad.Message.TrimEnd('.')}.");
            case StoreException or IOException or UnauthorizedAccessException:
                return Refused.Of(StatusCodes.Status507InsufficientStorage, e.Message);
            default:
                Fault(log, e);
                return Refused.Of(
                    StatusCodes.Status500InternalServerError,
                    $"Bug in Platewright ({e.GetType().Name}: {e.Message}). Please report it with what you did.");
        }
    }

    [LoggerMessage(LogLevel.Error, "A request failed")]
    private static partial void Fault(ILogger log, Exception e);
}
