using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Platewright.Build.Estimates;
using Platewright.Build.Learning;
using Platewright.Machines;
using Platewright.Study.Documents;
using Platewright.Study.Output;
using Platewright.Study.Pipeline;
using Platewright.Study.Store;

namespace Platewright.Study.Learning;

/// <summary>What was learned of each machine from its past jobs. Kept beside the store; a machine that is described otherwise
/// since then has nothing learned.</summary>
public sealed record LearnedMachines(IReadOnlyList<LearnedMachine> Machines)
{
    private const string FileName = "learned.json";

    public static readonly LearnedMachines None = new([]);

    /// <summary>Reads what the folder of a store keeps; nothing where it keeps none.</summary>
    /// <exception cref="StoreException">The file is there and not what was written.</exception>
    public static LearnedMachines Read(string storeFolder)
    {
        string path = Path.Combine(storeFolder, FileName);
        if (!File.Exists(path)) return None;
        try
        {
            using FileStream stream = File.OpenRead(path);
            return JsonSerializer.Deserialize<LearnedMachines>(stream, DocumentJson.Compact) ?? None;
        }
        catch (JsonException e)
        {
            throw new StoreException($"{path}: it is not what learn wrote ({e.Message}); delete it and run learn again.");
        }
    }

    /// <summary>Keeps these, with what is kept of other machines.</summary>
    public void Keep(string storeFolder)
    {
        LearnedMachines all = new(
            [.. Read(storeFolder).Machines.Where(m => Machines.All(own => own.Key != m.Key)), .. Machines]);
        AsideFile.Write(
            Path.Combine(storeFolder, FileName), stream => JsonSerializer.Serialize(stream, all, DocumentJson.Indented));
    }

    /// <summary>What is known of a machine; null where nothing is.</summary>
    public LearnedMachine? Of(Machine machine)
    {
        string key = KeyOf(machine);
        return Machines.FirstOrDefault(m => m.Key == key);
    }

    /// <summary>Tells a machine from the same one described otherwise.</summary>
    public static string KeyOf(Machine machine) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(machine.Id + CanonicalText.OfBuild(machine))));
}

/// <summary>Documents with what was learned applied.</summary>
public static class LearnedEstimates
{
    /// <param name="estimates">As the model gives them.</param>
    /// <param name="machines">The machines of their rows.</param>
    /// <param name="learned">What is known of them.</param>
    public static EstimatesDocument Corrected(
        this EstimatesDocument estimates, IReadOnlyList<Machine> machines, LearnedMachines learned)
    {
        Dictionary<string, LearnedMachine> known = [];
        foreach (Machine machine in machines) if (learned.Of(machine) is { } own) known[machine.Name] = own;
        return estimates with
        {
            Estimates = [.. estimates.Estimates.Select(e => known.TryGetValue(e.Machine, out LearnedMachine? own) ? own.Correct(e) : e)],
        };
    }
}

/// <summary>What past jobs say about one machine.</summary>
/// <param name="Key">Of the machine as it was described then.</param>
/// <param name="Energy">Null where too few jobs were metered.</param>
public sealed record LearnedMachine(string Machine, string Key, Correction Time, Correction? Energy)
{
    public PartEstimateDocument Correct(PartEstimateDocument e) => e with
    {
        TimeS = Correct(e.TimeS),
        EnergyKwh = e.EnergyKwh is { } energy ? Correct(energy) : null,
        TimeError = ErrorOf(Time),
        EnergyError = Energy is { } metered ? ErrorOf(metered) : e.EnergyError,
    };

    public EstimateRowDocument Correct(EstimateRowDocument e) => e with
    {
        TimeS = Correct(e.TimeS),
        EnergyKwh = Correct(e.EnergyKwh),
        TimeError = ErrorOf(Time),
        EnergyError = Energy is { } metered ? ErrorOf(metered) : e.EnergyError,
        Notes = [.. e.Notes, Sentence],
    };

    private string Sentence => FormattableString.Invariant(
        $"{Machine}: times are {100 * (Time.Factor - 1):+0;−0} % from {Time.Jobs} past jobs");

    private TimeDocument Correct(TimeDocument t)
    {
        double f = Time.Factor;
        return new TimeDocument(
            f * t.Total, f * t.WarmUp, f * t.Walls, f * t.SolidFaces, f * t.Infill, f * t.Support, f * t.Brim, f * t.Extruding,
            f * t.Travel, f * t.Waiting, f * t.Changes, f * t.Release);
    }

    private EnergyDocument Correct(EnergyDocument e)
    {
        double f = Energy?.Factor ?? 1;
        return new EnergyDocument(f * e.Total, f * e.WarmUp, f * e.Hold, f * e.Motion, f * e.Base);
    }

    private static ErrorDocument ErrorOf(Correction correction) => new(correction.Low, correction.High, ModelError.Log);
}
