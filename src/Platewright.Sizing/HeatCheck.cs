using System.Collections.Immutable;
using Platewright.Machines;

namespace Platewright.Sizing;

/// <summary>Whether a machine reaches the temperatures that a material needs.</summary>
public enum HeatAnswer
{
    Reaches,

    TooCool,

    /// <summary>The machine does not say what it heats to, or no material is named: heat is not judged.</summary>
    NotJudged,
}

/// <summary>What is heated.</summary>
public enum HeatedThing
{
    Nozzle,
    Bed,
    Chamber,
}

/// <summary>One temperature that is not reached, °C.</summary>
public sealed record HeatShortfall(HeatedThing What, double NeededC, double ReachedC)
{
    public double MissingC => NeededC - ReachedC;
}

/// <summary>The answer with what is missing: nothing unless it is <see cref="HeatAnswer.TooCool"/>.</summary>
public sealed record HeatCheck(HeatAnswer Answer, ImmutableArray<HeatShortfall> Missing)
{
    private static readonly HeatCheck NotJudged = new(HeatAnswer.NotJudged, []);

    private static readonly HeatCheck Enough = new(HeatAnswer.Reaches, []);

    /// <param name="reached">What the machine heats to, null where it does not say.</param>
    /// <param name="needed">What the material needs, null where none is named.</param>
    public static HeatCheck Of(HeatLimits? reached, HeatLimits? needed)
    {
        if (reached is null || needed is null) return NotJudged;
        ImmutableArray<HeatShortfall> missing =
        [
            .. new HeatShortfall[]
            {
                new(HeatedThing.Nozzle, needed.NozzleC, reached.NozzleC),
                new(HeatedThing.Bed, needed.BedC, reached.BedC),
                new(HeatedThing.Chamber, needed.ChamberC, reached.ChamberC),
            }.Where(s => s.MissingC > 0),
        ];
        return missing.IsEmpty ? Enough : new HeatCheck(HeatAnswer.TooCool, missing);
    }
}
