using System.Text.Json;
using System.Text.Json.Serialization;
using Platewright.Geometry;

namespace Platewright.Study.Store;

/// <summary>A value that is a handful of numbers, as a JSON array of them.</summary>
internal abstract class NumberListConverter<T>(int count) : JsonConverter<T>
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        Span<double> numbers = stackalloc double[count];
        if (reader.TokenType != JsonTokenType.StartArray) throw new JsonException("a list of numbers was expected");
        for (int i = 0; i < count; i++)
        {
            reader.Read();
            numbers[i] = reader.GetDouble();
        }
        reader.Read();
        return reader.TokenType == JsonTokenType.EndArray ? Join(numbers) : throw new JsonException("a list of numbers is too long");
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        Span<double> numbers = stackalloc double[count];
        Split(value, numbers);
        writer.WriteStartArray();
        foreach (double number in numbers) writer.WriteNumberValue(number);
        writer.WriteEndArray();
    }

    protected abstract T Join(ReadOnlySpan<double> numbers);

    protected abstract void Split(T value, Span<double> numbers);
}

/// <summary>[x, y, z].</summary>
internal sealed class Vec3Converter() : NumberListConverter<Vec3>(3)
{
    protected override Vec3 Join(ReadOnlySpan<double> n) => new(n[0], n[1], n[2]);

    protected override void Split(Vec3 value, Span<double> n) => (n[0], n[1], n[2]) = (value.X, value.Y, value.Z);
}

/// <summary>[w, x, y, z].</summary>
internal sealed class RotationConverter() : NumberListConverter<Rotation>(4)
{
    protected override Rotation Join(ReadOnlySpan<double> n) => new(n[0], n[1], n[2], n[3]);

    protected override void Split(Rotation value, Span<double> n) => (n[0], n[1], n[2], n[3]) = (value.W, value.X, value.Y, value.Z);
}

/// <summary>[least x, y, z, greatest x, y, z].</summary>
internal sealed class Bounds3Converter() : NumberListConverter<Bounds3>(6)
{
    protected override Bounds3 Join(ReadOnlySpan<double> n) => new(new(n[0], n[1], n[2]), new(n[3], n[4], n[5]));

    protected override void Split(Bounds3 value, Span<double> n)
    {
        (n[0], n[1], n[2]) = (value.Min.X, value.Min.Y, value.Min.Z);
        (n[3], n[4], n[5]) = (value.Max.X, value.Max.Y, value.Max.Z);
    }
}

/// <summary>[bed, height].</summary>
internal sealed class BedAndHeightConverter() : NumberListConverter<Fit.BedAndHeight>(2)
{
    protected override Fit.BedAndHeight Join(ReadOnlySpan<double> n) => new(n[0], n[1]);

    protected override void Split(Fit.BedAndHeight value, Span<double> n) => (n[0], n[1]) = (value.BedMm, value.HeightMm);
}
