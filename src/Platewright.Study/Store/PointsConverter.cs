using System.Runtime.InteropServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using Platewright.Geometry;

namespace Platewright.Study.Store;

/// <summary>A long list of points as base64 of little-endian float64: exact, and quick to read back.</summary>
internal sealed class PointsConverter : JsonConverter<IReadOnlyList<Vec3>>
{
    public override IReadOnlyList<Vec3> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        MemoryMarshal.Cast<byte, Vec3>(reader.GetBytesFromBase64()).ToArray();

    public override void Write(Utf8JsonWriter writer, IReadOnlyList<Vec3> value, JsonSerializerOptions options) =>
        writer.WriteBase64StringValue(MemoryMarshal.AsBytes<Vec3>(value.ToArray()));
}
