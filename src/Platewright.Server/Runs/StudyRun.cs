using Platewright.Study.Documents;
using Platewright.Study.Pipeline;

namespace Platewright.Server.Runs;

/// <summary>One run of a study, watched from any thread.</summary>
internal sealed class StudyRun : IProgressListener, IDisposable
{
    private readonly Lock _gate = new();
    private readonly CancellationTokenSource _cancel = new();
    private readonly List<StageDoneDocument> _through = [];
    private RunDocument _now = RunDocument.Idle with { State = "waiting", Sentence = "Another study is being computed; this one comes next." };

    public CancellationToken Cancelled => _cancel.Token;

    /// <summary>Ends when the run has ended and that is remembered; never fails.</summary>
    public Task Ended { get; set; } = Task.CompletedTask;

    /// <summary>How it stands, and a number that goes up with each change.</summary>
    public (RunDocument Document, int Version) Now
    {
        get
        {
            lock (_gate) return (_now, Version);
        }
    }

    private int Version { get; set; }

    public bool IsOver => Now.Document.State is "stopped" or "finished" or "failed";

    public void Begin(string stage, int items)
    {
        lock (_gate)
        {
            if (_now.Stage is { } before) _through.Add(new StageDoneDocument(before, _now.Items));
            Set(_now with { Stage = stage, Items = items, Done = 0, Last = null, Stages = [.. _through] });
        }
    }

    public void Advance(string what)
    {
        lock (_gate) Set(_now with { Done = _now.Done + 1, Last = what });
    }

    public void Go()
    {
        lock (_gate) Set(_now with { State = _now.State == "stopping" ? "stopping" : "going", Sentence = null });
    }

    public void Stop()
    {
        lock (_gate)
        {
            if (_now.State is "stopped" or "finished" or "failed") return;
            Set(_now with { State = "stopping", Sentence = "What is being computed now comes to its end." });
        }
        _cancel.Cancel();
    }

    /// <summary>The last word on the run.</summary>
    public void End(RunDocument last)
    {
        lock (_gate) Set(last);
    }

    public void Dispose() => _cancel.Dispose();

    private void Set(RunDocument now)
    {
        _now = now;
        Version++;
    }
}
