using System.Text.Json;
using Platewright.Study.Documents;

namespace Platewright.Cli;

/// <summary>The one JSON document on standard output.</summary>
internal static class JsonOutput
{
    public static void Write<T>(Screen screen, T document)
    {
        screen.Output.WriteLine(JsonSerializer.Serialize(document, DocumentJson.Indented));
        screen.Output.Flush();
    }
}
