using Platewright.Geometry;
using Platewright.Study.Documents;

namespace Platewright.Study.Describing;

/// <summary>Findings as the documents show them: with so many places that a part of any mesh stays small.</summary>
internal static class FindingsDescription
{
    /// <summary>Places of one part: about a kilobyte.</summary>
    private const int MostPlaces = 20;

    // Places are told to this share of the part's size: finer than the eye sees.
    private const double Fineness = 1e-4;
    private const int MostDecimals = 15;

    public static IReadOnlyList<FindingDocument> Of(IReadOnlyList<Finding> findings, Vec3 sizeMm)
    {
        double longest = Math.Max(sizeMm.X, Math.Max(sizeMm.Y, sizeMm.Z));
        int decimals = longest > 0 ? Math.Clamp((int)-Math.Floor(Math.Log10(longest * Fineness)), 0, MostDecimals) : MostDecimals;
        int[] shares = Shares([.. findings.Select(f => f.Places.Count)]);
        return
        [
            .. findings.Select((f, i) => new FindingDocument(
                f.Code, f.Count, f.Message, [.. f.Places.Take(shares[i]).Select(p => Numbers(p, decimals))])),
        ];
    }

    // In turn, so that each finding keeps its first places.
    private static int[] Shares(int[] wanted)
    {
        int[] shares = new int[wanted.Length];
        int left = Math.Min(MostPlaces, wanted.Sum());
        for (int i = 0; left > 0; i = (i + 1) % wanted.Length)
        {
            if (shares[i] == wanted[i]) continue;
            shares[i]++;
            left--;
        }
        return shares;
    }

    private static IReadOnlyList<double> Numbers(FindingPlace place, int decimals)
    {
        IReadOnlyList<double> from = Numbers(place.From), to = Numbers(place.To);
        return from.SequenceEqual(to) ? from : [.. from, .. to];

        IReadOnlyList<double> Numbers(Vec3 v) => [.. MachineDescription.Numbers(v).Select(n => Math.Round(n, decimals))];
    }
}
