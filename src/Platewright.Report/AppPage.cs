using System.Text.RegularExpressions;

namespace Platewright.Report;

/// <summary>The same bundle as the page of the local app: without a study inside, its policy left to the server's header.</summary>
/// <param name="Html">The page.</param>
/// <param name="ScriptSource">The source of its one script, as a content security policy names it.</param>
public sealed partial record AppPage(string Html, string ScriptSource)
{
    private const string Mark = "<meta name=\"platewright-host\" content=\"app\" />";

    public static AppPage Create()
    {
        string bundle = ReportPage.ReadBundle();
        Match policy = PolicyTag().Match(bundle);
        Match source = ScriptHash().Match(policy.Value);
        if (!policy.Success || !source.Success) throw new InvalidOperationException("Bug in Platewright: the page names no policy of its own.");
        return new AppPage(bundle.Replace(policy.Value, Mark, StringComparison.Ordinal), source.Value);
    }

    [GeneratedRegex("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PolicyTag();

    [GeneratedRegex("'sha256-[A-Za-z0-9+/=]+'", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex ScriptHash();
}
