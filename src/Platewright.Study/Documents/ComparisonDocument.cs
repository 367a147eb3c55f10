using System.ComponentModel.DataAnnotations;
using System.Text.Json.Serialization;

namespace Platewright.Study.Documents;

/// <summary>What differs between two studies. Machines, projects and parts are matched by their names.</summary>
/// <param name="Machines">Machines of both, then those of one.</param>
/// <param name="Changed">Projects of both whose verdict on a machine of both differs.</param>
/// <param name="OnlyFirst">Names of projects of the first study alone.</param>
/// <param name="Assumptions">Those with another value.</param>
public sealed record ComparisonDocument(
    ComparedStudyDocument First, ComparedStudyDocument Second, IReadOnlyList<ComparedMachineDocument> Machines,
    IReadOnlyList<ChangedVerdictDocument> Changed, IReadOnlyList<string> OnlyFirst, IReadOnlyList<string> OnlySecond,
    IReadOnlyList<ComparedAssumptionDocument> Assumptions)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <param name="Recommendation">The first sentence of its decision sheet; null without one.</param>
/// <param name="PerMonth">Of the recommended machines; null where there are none.</param>
public sealed record ComparedStudyDocument(
    string Name, string Headline, int Projects, int Parts, string? Recommendation, decimal? PerMonth, string? Currency);

/// <param name="First">What it can make of the first study's projects; null where that has no such machine.</param>
/// <param name="FirstTimeS">All parts it takes whole, once; null where nothing was estimated.</param>
public sealed record ComparedMachineDocument(
    string Name, ShareDocument? First, ShareDocument? Second, int FirstProjects, int SecondProjects, double? FirstTimeS, double? SecondTimeS,
    double? FirstKwh, double? SecondKwh);

/// <param name="First">as_drawn, turned, tilted, scaled, in_pieces, no.</param>
/// <param name="FirstCanMake">Whether the first study's machine can make it.</param>
public sealed record ChangedVerdictDocument(
    string Project, string Machine, [property: AllowedValues("as_drawn", "turned", "tilted", "scaled", "in_pieces", "no")] string First,
    bool FirstCanMake,
    [property: AllowedValues("as_drawn", "turned", "tilted", "scaled", "in_pieces", "no")] string Second, bool SecondCanMake);

/// <param name="First">Null where only the other study has it.</param>
public sealed record ComparedAssumptionDocument(string Key, string What, string Unit, double? First, double? Second);
