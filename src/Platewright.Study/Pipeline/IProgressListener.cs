namespace Platewright.Study.Pipeline;

/// <summary>Hears how long work goes on. Called from any thread; must not throw.</summary>
public interface IProgressListener
{
    /// <summary>A stage begins that has <paramref name="items"/> things to do.</summary>
    void Begin(string stage, int items);

    /// <summary>One thing of the stage is done, computed now or found in the store.</summary>
    /// <param name="what">The file or part it was.</param>
    void Advance(string what);
}
