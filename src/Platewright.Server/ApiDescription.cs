using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Platewright.Server;

/// <summary>What the OpenAPI description says beyond the routes: its title, and words where a text is one of a few.</summary>
internal static class ApiDescription
{
    public static void Describe(OpenApiOptions options)
    {
        options.AddDocumentTransformer((document, _, _) =>
        {
            document.Info.Title = "Platewright, the local app";
            document.Info.Version = "1";
            document.Info.Description = "Which machine the work needs. Answers on the loopback address only. Lengths are mm, times s, temperatures °C, energy kWh.";
            document.Servers?.Clear();
            foreach (IOpenApiSchema schema in document.Components?.Schemas?.Values ?? []) FreeOfNulls(schema);
            return Task.CompletedTask;
        });
        options.AddSchemaTransformer((schema, context, _) =>
        {
            AllowedValuesAttribute? words = context.JsonPropertyInfo?.AttributeProvider?.GetCustomAttributes(typeof(AllowedValuesAttribute), inherit: true)
                .OfType<AllowedValuesAttribute>().FirstOrDefault();
            if (words is not null) schema.Enum = [.. words.Values.Select(v => System.Text.Json.Nodes.JsonValue.Create((string?)v)!)];
            return Task.CompletedTask;
        });
    }

    // What is null is left out of the page that carries its study with it.
    private static void FreeOfNulls(IOpenApiSchema schema)
    {
        if (schema is not OpenApiSchema { Required: { } required, Properties: { } properties }) return;
        foreach (string name in required.Where(n => MayBeNull(properties[n])).ToArray()) required.Remove(name);
    }

    private static bool MayBeNull(IOpenApiSchema schema) =>
        schema.Type?.HasFlag(JsonSchemaType.Null) is true || schema.OneOf?.Any(o => o.Type == JsonSchemaType.Null) is true;
}
