namespace Platewright.Sizing.Covering;

/// <summary>What a share of the work is a share of.</summary>
public enum Measure
{
    /// <summary>Copies of parts, each project taken once. Parts of a project that stays undone are counted.</summary>
    Parts,

    /// <summary>Projects, each taken once.</summary>
    Projects,

    /// <summary>Projects, each as often as it is made.</summary>
    ProjectsAsMade,

    /// <summary>Machine hours in a month, by the shortest time of any machine; of whole projects.</summary>
    Hours,

    /// <summary>Filament in a month, g, by the least of any machine; of whole projects.</summary>
    Mass,

    /// <summary>What the work costs in a month, by the least of any machine with a price; of whole projects.</summary>
    Money,
}
