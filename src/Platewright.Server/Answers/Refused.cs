using Microsoft.AspNetCore.Http;
using Platewright.Formats.Toml;
using Platewright.Study.Documents;

namespace Platewright.Server.Answers;

/// <summary>Answers that say why a request was not carried out.</summary>
internal static class Refused
{
    public static IResult Of(int status, string error, IReadOnlyList<FieldErrorDocument>? fields = null) =>
        Results.Json(new RefusalDocument(error, fields ?? []), DocumentJson.Compact, statusCode: status);

    public static IResult Missing(string what) => Of(StatusCodes.Status404NotFound, what);

    /// <summary>What a user wrote cannot be used: every error with its key and line.</summary>
    public static IResult Of(DescriptionException wrong) =>
        Of(StatusCodes.Status422UnprocessableEntity, Sentence(wrong), FieldsOf(wrong));

    public static string Sentence(DescriptionException wrong) =>
        wrong.Errors.Length == 1 ? wrong.Errors[0].ToString() : $"{wrong.Errors.Length} things are not right.";

    public static IReadOnlyList<FieldErrorDocument> FieldsOf(DescriptionException wrong) =>
        [.. wrong.Errors.Select(e => new FieldErrorDocument(FieldOf(e.Key), e.Line, e.Message))];

    // An argument of the command line is a field of a form here: --bed-minutes is bed_minutes.
    private static string? FieldOf(string? key) =>
        key is { } option && option.StartsWith("--", StringComparison.Ordinal) ? option[2..].Replace('-', '_') : key;
}
