using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;

namespace Platewright.Study.Pipeline;

/// <summary>One function over many items on all cores; results in the order of the items, whatever the threads do.</summary>
internal static class ParallelWork
{
    /// <param name="items">What is worked on.</param>
    /// <param name="nameOf">What to call an item while it goes on.</param>
    /// <param name="work">Called from several threads at once.</param>
    /// <param name="progress">Hears of each item that is done.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="OperationCanceledException">It was cancelled; work in hand was given the chance to stop.</exception>
    public static TResult[] Map<T, TResult>(
        IReadOnlyList<T> items, Func<T, string> nameOf, Func<T, TResult> work, IProgressListener progress, CancellationToken cancel)
    {
        var results = new TResult[items.Count];
        // One at a time and in order: items differ a thousandfold in cost, and neighbours share what they are made of.
        OrderablePartitioner<int> order = Partitioner.Create(
            Enumerable.Range(0, items.Count), EnumerablePartitionerOptions.NoBuffering);
        try
        {
            Parallel.ForEach(
                order,
                new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount },
                i =>
                {
                    results[i] = work(items[i]);
                    progress.Advance(nameOf(items[i]));
                });
        }
        catch (AggregateException e)
        {
            cancel.ThrowIfCancellationRequested();
            ExceptionDispatchInfo.Throw(e.Flatten().InnerExceptions[0]);
        }
        return results;
    }
}
