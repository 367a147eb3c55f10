using Platewright.Build.Estimates;
using Platewright.Build.Learning;
using Platewright.Formats.Programs;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Study.Documents;
using Platewright.Study.Examining;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Learning;

/// <summary>Estimates the jobs of a log anew and fits what each machine really takes: the whole of <c>learn</c>.</summary>
/// <param name="Log">The log; paths in it start from its folder.</param>
public sealed record LearnRun(string Log)
{
    private const string UsualMaterial = "PLA";

    /// <returns>What to show, and what to keep.</returns>
    /// <exception cref="DescriptionException">The log, or a machine, recipe or material it names, is not right.</exception>
    public (LearnDocument Document, LearnedMachines Learned) Run(IProgressListener progress, CancellationToken cancel)
    {
        IReadOnlyList<PastJob> jobs = JobLog.Read(Log);
        string folder = Path.GetDirectoryName(Path.GetFullPath(Log))!;
        List<LearnedJobDocument> found = [];
        List<UnusableDocument> unusable = [];
        Dictionary<string, Machine> machines = new(StringComparer.Ordinal);
        progress.Begin("Estimating past jobs", jobs.Count);
        foreach (PastJob job in jobs)
        {
            Machine machine = Named(job, "machine", job.Machine, name => MachineCatalog.Find(Resolve(folder, name)));
            if (machine.Motion is null) throw Wrong(job, "machine", $"{machine.Name} states no motion limits, so nothing can be estimated.");
            machines[machine.Id] = machine;
            EstimatesDocument estimates = Estimate(job, machine, folder, cancel);
            unusable.AddRange(estimates.Unusable);
            EstimateRowDocument[] meant = [.. estimates.Estimates.Where(e => job.Part is null || e.Part == job.Part)];
            if (meant.Length > 1) throw Wrong(job, "part", $"{job.File} holds {meant.Length} parts: name the one that was built.");
            if (meant.Length == 0 && estimates.Unusable.Count == 0) throw Wrong(job, "part", $"{job.File} holds no part of that name.");
            if (meant.Length == 1)
            {
                EstimateRowDocument e = meant[0];
                found.Add(new LearnedJobDocument(
                    job.Line, job.File, machine.Id, job.MeasuredS, e.TimeS.Total, job.EnergyKwh,
                    e.EnergyKwh.Total > 0 ? e.EnergyKwh.Total : null));
            }
            progress.Advance(job.File);
        }
        List<LearnedDocument> documents = [];
        List<LearnedMachine> learned = [];
        foreach (var group in found.GroupBy(j => j.Machine, StringComparer.Ordinal))
        {
            Correction? time = Fit([.. group.Select(j => j.MeasuredS / j.EstimatedS)], ModelError.PriorTime);
            Correction? energy = Fit(
                [.. group.Where(j => j.EstimatedKwh is not null).Select(j => j.MeasuredKwh / j.EstimatedKwh).OfType<double>()],
                ModelError.PriorEnergy);
            documents.Add(new LearnedDocument(group.Key, group.Count(), Of(time), Of(energy)));
            if (time is not null)
                learned.Add(new LearnedMachine(machines[group.Key].Name, LearnedMachines.KeyOf(machines[group.Key]), time, energy));
        }
        return (new LearnDocument(documents, found, unusable), new LearnedMachines(learned));
    }

    private EstimatesDocument Estimate(PastJob job, Machine machine, string folder, CancellationToken cancel)
    {
        string path = Path.GetFullPath(Path.Combine(folder, job.File));
        Recipe? recipe = ProgramReader.IsProgram(path)
            ? null
            : Named(job, "recipe", job.Recipe ?? RecipeCatalog.Usual.Id, name => RecipeCatalog.Find(Resolve(folder, name)));
        Material material = Named(job, "material", job.Material ?? recipe?.Material ?? UsualMaterial, MaterialCatalog.Get);
        return new EstimateRun([path], [machine], recipe, material, Full: false, ExamineOptions.Default)
            .Run(new NoProgress(), cancel);
    }

    private static Correction? Fit(double[] ratios, double prior) =>
        ratios.Length < CorrectionFit.LeastJobs ? null : CorrectionFit.Of(ratios, prior);

    private static CorrectionDocument? Of(Correction? c) => c is null ? null : new(c.Factor, c.Low, c.High, c.Jobs);

    private static string Resolve(string folder, string name) =>
        MachineCatalog.LooksLikePath(name) ? Path.GetFullPath(Path.Combine(folder, name)) : name;


    private T Named<T>(PastJob job, string column, string name, Func<string, T> find)
    {
        try
        {
            return find(name);
        }
        catch (DescriptionException e)
        {
            throw new DescriptionException(new DescriptionError(e.Message, Log.Replace('\\', '/'), job.Line, column));
        }
    }

    private DescriptionException Wrong(PastJob job, string column, string message) =>
        new(new DescriptionError(message, Log.Replace('\\', '/'), job.Line, column));

    private sealed class NoProgress : IProgressListener
    {
        public void Begin(string stage, int items)
        {
        }

        public void Advance(string what)
        {
        }
    }
}
