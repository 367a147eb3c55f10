namespace Platewright.Sizing.Money;

/// <summary>Who runs the machines: how many builds fail depends on it more than on the machine.</summary>
public enum WorkshopKind
{
    /// <summary>One person who knows the machine.</summary>
    Practised,

    /// <summary>Several machines, looked after daily.</summary>
    Tended,

    /// <summary>Many people, most of them new to it.</summary>
    Open,
}

/// <summary>Prior shares of failed builds.</summary>
public static class Failures
{
    /// <summary>
    /// Open: 41.1 % of builds in an open student studio (Song and Telenko, Causes of desktop FDM fabrication failures in an open studio
    /// environment, Procedia CIRP 2019; read as an abstract, authors and year from memory). The others are anecdotal.
    /// </summary>
    public static Guess Of(WorkshopKind kind) => kind switch
    {
        WorkshopKind.Practised => new(0.10, 0.05, 0.15, "one practised person: 5 to 15 %, anecdotal"),
        WorkshopKind.Tended => new(0.03, 0.01, 0.05, "machines looked after daily: 1 to 5 %, anecdotal"),
        WorkshopKind.Open => new(
            0.41, 0.25, 0.5, "an open student studio: 41 % (Song and Telenko, Procedia CIRP 2019)"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind of workshop."),
    };

    /// <summary>Builds begun for each one that succeeds, where each fails with the same chance: 1/(1 − p).</summary>
    /// <param name="failureShare">0 … 1, without 1.</param>
    public static double AttemptsFor(double failureShare) => 1 / (1 - failureShare);
}
