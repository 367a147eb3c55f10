using System.Text.RegularExpressions;

namespace Platewright.Tests.Cli;

/// <summary>What a study wrote, without what may differ between runs.</summary>
internal static partial class StudyResults
{
    public static string Json(string folder) => WithoutSeconds(File.ReadAllText(Path.Combine(folder, "study.json")));

    public static string WithoutSeconds(string json) => Seconds().Replace(json, "\"seconds\":0");

    [GeneratedRegex("\"seconds\":\\s*[0-9.E+-]+", RegexOptions.None, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Seconds();
}
