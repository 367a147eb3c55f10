using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;
using Platewright.Formats.Toml;
using Platewright.Server.Answers;
using Platewright.Server.Shelf;
using Platewright.Study.Documents;
using Platewright.Study.Learning;
using Platewright.Study.Output;
using Platewright.Study.Pipeline;
using Platewright.Study.Store;

namespace Platewright.Server.Runs;

/// <summary>
/// Runs studies, one at a time: each uses all cores, so two at once would only make both late. A run goes on while no page looks; what it
/// finished is in the store at once, so that a run that was stopped or killed goes on where it was.
/// </summary>
internal sealed partial class StudyRuns(LocalAppSettings settings, ILogger<StudyRuns> log) : IAsyncDisposable
{
    private const long StoreBytes = 2L << 30;

    private readonly ConcurrentDictionary<string, StudyRun> _runs = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim _turn = new(1);
    private readonly Lock _gate = new();

    /// <summary>What killed runs left behind is said.</summary>
    public static void Recover(StudyShelf shelf)
    {
        foreach (KeptStudy study in shelf.All().Where(s => s.About.Running))
            study.Change(a => a with { Running = false, Ended = Stopped("The app ended while this was being computed") });
    }

    /// <summary>How the study's run stands; null where none was started since the app began.</summary>
    public StudyRun? Of(KeptStudy study) => _runs.GetValueOrDefault(study.Id);

    /// <summary>Starts a run, or gives the one that goes on.</summary>
    /// <exception cref="DescriptionException">Its settings are not right.</exception>
    public StudyRun Start(KeptStudy study)
    {
        // Read before anything starts: what is wrong in the settings is told to who asked.
        _ = study.Open(CancellationToken.None);
        lock (_gate)
        {
            if (_runs.TryGetValue(study.Id, out StudyRun? there) && !there.IsOver) return there;
            StudyRun run = new();
            study.Change(a => a with { Running = true });
            _runs[study.Id] = run;
            run.Ended = Task.Run(() => RunInTurn(study, run));
            return run;
        }
    }

    /// <summary>A document with other assumptions or shared in another way, from what the store holds. Nothing is remembered.</summary>
    /// <exception cref="DescriptionException">The settings are not right.</exception>
    public StudyDocument Compute(StudySource source, Sharing sharing, CancellationToken cancel)
    {
        using ResultStore store = ResultStore.Open(settings.Store);
        using StudyRun unwatched = new();
        return Compute(source, sharing, store, unwatched, cancel).Document;
    }

    public async ValueTask DisposeAsync()
    {
        foreach (StudyRun run in _runs.Values) run.Stop();
        await Task.WhenAll(_runs.Values.Select(r => r.Ended));
        foreach (StudyRun run in _runs.Values) run.Dispose();
        _turn.Dispose();
    }

    private async Task RunInTurn(KeptStudy study, StudyRun run)
    {
        RunDocument last = Stopped("Stopped");
        try
        {
            await _turn.WaitAsync(run.Cancelled);
            try
            {
                run.Go();
                last = await Task.Factory.StartNew(() => Finish(study, run), TaskCreationOptions.LongRunning);
            }
            finally
            {
                _turn.Release();
            }
        }
        catch (OperationCanceledException)
        {
            // The last word is already that it was stopped.
        }
        catch (DescriptionException e)
        {
            last = Failed(Refused.Sentence(e)) with { Faults = Refused.FieldsOf(e) };
        }
        catch (Exception e) when (e is StoreException or IOException or UnauthorizedAccessException)
        {
            last = Failed(e.Message);
        }
#pragma warning disable CA1031 // The last line of defence: one study fails with a sentence, the app goes on.
        catch (Exception e)
        {
            Fault(e);
            last = Failed($"Bug in Platewright ({e.GetType().Name}: {e.Message}). Please report it.");
        }
#pragma warning restore CA1031
        Remember(study, last);
        run.End(last);
    }

    private RunDocument Finish(KeptStudy study, StudyRun run)
    {
        int revision = study.About.Revision;
        StudySource source = study.Open(run.Cancelled);
        using ResultStore store = ResultStore.Open(settings.Store);
        StudyOutcome outcome = Compute(source, Sharing.Everything, store, run, run.Cancelled);
        StudyDocument found = outcome.Document;
        AsideFile.Write(study.ResultPath, stream => StudyJson.Write(found, stream));
        store.Trim(StoreBytes);
        ResultDocument result = new(
            found.Headline, found.Machines.Count, found.Projects.Count, found.Parts.Count, found.Unusable.Count, settings.Clock.GetUtcNow(), Current: true);
        study.Change(a => a with { Result = result, ResultRevision = revision });
        (RunDocument now, _) = run.Now;
        return now with
        {
            State = "finished",
            Stage = null,
            Stages = [.. now.Stages, new StageDoneDocument(now.Stage ?? "", now.Items)],
            Last = null,
            Sentence = $"Computed {outcome.Computed.Values.Sum()} results, found {outcome.Found} in the store.",
        };
    }

    private StudyOutcome Compute(StudySource source, Sharing sharing, ResultStore store, StudyRun run, CancellationToken cancel) => StudyPipeline.Run(
        source, sharing, withEstimates: true, LearnedMachines.Read(settings.Store), store, run, cancel);

    // The folder may be gone, or the disk full: the run still ends.
    private void Remember(KeptStudy study, RunDocument last)
    {
        try
        {
            study.Change(a => a with { Running = false, Ended = last });
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Fault(e);
        }
    }

    private static RunDocument Stopped(string why) =>
        RunDocument.Idle with { State = "stopped", Sentence = $"{why}. What was finished is kept; a new start goes on from there." };

    private static RunDocument Failed(string why) => RunDocument.Idle with { State = "failed", Sentence = why };

    [LoggerMessage(LogLevel.Error, "A run failed")]
    private partial void Fault(Exception e);
}
