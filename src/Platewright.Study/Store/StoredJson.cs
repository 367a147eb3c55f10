using System.Text.Json.Serialization;
using Platewright.Fit;

namespace Platewright.Study.Store;

/// <summary>The JSON that the store keeps: exact numbers, no computed properties. Not for anyone else to read.</summary>
[JsonSourceGenerationOptions(
    IgnoreReadOnlyProperties = true,
    NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
    Converters = [typeof(Vec3Converter), typeof(RotationConverter), typeof(Bounds3Converter), typeof(BedAndHeightConverter),
        typeof(PointsConverter)])]
[JsonSerializable(typeof(Examining.Examination))]
[JsonSerializable(typeof(FitResult))]
[JsonSerializable(typeof(SizeNeed))]
[JsonSerializable(typeof(Documents.PartEstimateDocument))]
[JsonSerializable(typeof(Documents.SizingDocument))]
internal sealed partial class StoredJson : JsonSerializerContext;
