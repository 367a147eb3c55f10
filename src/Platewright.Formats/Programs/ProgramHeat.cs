namespace Platewright.Formats.Programs;

/// <summary>The temperatures a program asks for.</summary>
internal sealed class ProgramHeat
{
    public WantedHeat? Nozzle { get; private set; }

    public WantedHeat? Bed { get; private set; }

    public WantedHeat? Chamber { get; private set; }

    /// <param name="code">M104, M109, M140, M190, M141 or M191, × 10.</param>
    public void Want(int code, double temperatureC)
    {
        switch (code)
        {
            case 1040 or 1090:
                Nozzle = With(Nozzle, temperatureC);
                break;
            case 1400 or 1900:
                Bed = With(Bed, temperatureC);
                break;
            default:
                Chamber = With(Chamber, temperatureC);
                break;
        }
    }

    private static WantedHeat With(WantedHeat? sofar, double temperatureC) =>
        new(sofar?.FirstC ?? temperatureC, Math.Max(sofar?.MostC ?? temperatureC, temperatureC));
}
