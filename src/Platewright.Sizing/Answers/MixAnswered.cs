using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Mixing;
using Platewright.Sizing.Money;

namespace Platewright.Sizing.Answers;

/// <summary>The cheapest mix for the aim, the front of mixes, and what changes the answer.</summary>
public sealed record MixAnswered(MixAsked Asked, MixAnswer Answer, MixFront Front, ImmutableArray<Sensitivity> Sensitivities)
{
    /// <summary>A point of a drawing needs less proof than the answer.</summary>
    private static readonly MixEffort FrontEffort = new(DeterministicSeconds: 1, Rounds: 4);

    public static MixAnswered? Of(
        SizingCase c, IReadOnlyList<MachineWork> work, IReadOnlyList<decimal> printedParts, CancellationToken cancel)
    {
        CostNumbers usual = CostNumbers.Usual(c.Costs);
        if (MixAsked.Of(c, work, usual, printedParts) is not { } asked) return null;
        // Neither looks at the other: side by side they take the time of the longer one.
        Task<MixFront> drawing = Task.Run(() => MixFront.Of(asked.Problem, FrontEffort, cancellation: cancel), cancel);
        MixAnswer answer = Mix.Solve(asked.Problem, null, cancel);
        MixFront front = drawing.GetAwaiter().GetResult();
        if (answer.Mix is null) return new MixAnswered(asked, answer, new MixFront([], 0, 0), []);
        return new MixAnswered(asked, answer, front, Sensitivity.Of(c, work, printedParts, asked, answer.Mix, front, cancel));
    }
}
