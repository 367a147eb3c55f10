using System.Text.Json;
using Platewright.Study.Documents;

namespace Platewright.Study.Output;

/// <summary>study.json.</summary>
public static class StudyJson
{
    private static readonly byte[] LineEnd = "\n"u8.ToArray();

    public static void Write(StudyDocument study, Stream stream)
    {
        JsonSerializer.Serialize(stream, study, DocumentJson.Compact);
        stream.Write(LineEnd);
    }
}
