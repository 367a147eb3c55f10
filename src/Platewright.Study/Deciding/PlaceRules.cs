using System.Globalization;
using Platewright.Machines;
using Platewright.Sizing.Answers;
using Platewright.Sizing.Hours;
using Platewright.Study.Documents;

namespace Platewright.Study.Deciding;

/// <summary>What a place does not allow: a material's air, and builds that are too long for its hours.</summary>
internal sealed class PlaceRules(SizingPlan plan)
{
    private const double SecondsPerMinute = 60;

    private readonly Place? _place = plan.Place.LimitsHours ? Places.Of(plan.Place) : null;

    /// <summary>One sentence for each rule that keeps a part from being made on a machine here.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="material">Null where none is known: then its air is not judged.</param>
    /// <param name="estimate">Null where nothing was estimated: then its hours are not judged.</param>
    public IReadOnlyList<string> Against(Machine machine, Material? material, PartEstimateDocument? estimate)
    {
        List<string> said = [];
        if (material is { LowEmission: false })
        {
            if (plan.Place.LowEmissionOnly)
                said.Add($"{material.Name} is not among the materials that give off least, and this place allows no others.");
            if (plan.Place.Exhaust is { } asked && asked > (machine.Exhaust ?? Exhaust.None))
                said.Add($"{material.Name} asks for {Words(asked)} here; the machine {(machine.Exhaust is null ? "does not say that it has one" : "has none")}.");
        }
        if (estimate is null || _place is null) return said;
        BuildStages stages = Loads.StagesOf(estimate.TimeS.Total, estimate.TimeS.WarmUp, estimate.TimeS.Release, plan.Costs);
        if (!_place.EverMakes(stages))
        {
            double longest = _place.LongestRunWithS(stages.PrepareS, stages.ReleaseS, stages.TakeOffS);
            said.Add($"It runs {Time(stages.RunS)}; with the hours and rules of this place {(longest > 0 ? $"the longest run is {Time(longest)}" : "no run is possible")}.");
        }
        return said;
    }

    private static string Words(Exhaust asked) => asked == Exhaust.Filter ? "a filter or a duct" : "a duct";

    private static string Time(double seconds)
    {
        long minutes = (long)Math.Round(seconds / SecondsPerMinute);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60}:{minutes % 60:00} h");
    }
}
