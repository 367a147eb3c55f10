using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Platewright.Study.Documents;

namespace Platewright.Report;

/// <summary>
/// How the study lies in the page: as in study.json, but numbers carry six digits, which is more than a drawing shows
/// and half the bytes, and what is null is left out. Rounding keeps order, so what was within a step stays within it.
/// </summary>
internal static class PageJson
{
    public static JsonSerializerOptions Options { get; } = new(DocumentJson.Compact)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new SixDigits() },
    };

    private sealed class SixDigits : JsonConverter<double>
    {
        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) =>
            writer.WriteRawValue(value.ToString("G6", CultureInfo.InvariantCulture));
    }
}
