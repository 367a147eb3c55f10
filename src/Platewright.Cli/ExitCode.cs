namespace Platewright.Cli;

/// <summary>What the command says to the shell.</summary>
internal static class ExitCode
{
    /// <summary>All inputs were used.</summary>
    public const int Done = 0;

    /// <summary>Some input could not be used; the rest is done and written.</summary>
    public const int SomeUnusable = 1;

    /// <summary>Wrong usage, or a study, machine or store that cannot be read.</summary>
    public const int WrongUsage = 2;

    /// <summary>Interrupted; finished work is kept.</summary>
    public const int Interrupted = 130;

    /// <summary>A fault of the program itself (EX_SOFTWARE of sysexits).</summary>
    public const int Fault = 70;

    public static int For(int unusable) => unusable == 0 ? Done : SomeUnusable;
}
