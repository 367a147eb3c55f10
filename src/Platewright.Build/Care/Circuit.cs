namespace Platewright.Build.Care;

/// <summary>An electrical circuit, and what may run on it for hours.</summary>
/// <param name="Volts">Voltage, V.</param>
/// <param name="Amperes">Rating of its breaker or fuse, A.</param>
/// <param name="UnderNec">
/// Whether the US National Electrical Code applies: for loads of three hours or more the device is rated at 125 % of
/// the load (NFPA 70, 210.20(A)). IEC countries have no such general rule (IEC 60364-4-43 asks I_B ≤ I_n ≤ I_z).
/// </param>
public sealed record Circuit(double Volts, double Amperes, bool UnderNec)
{
    /// <summary>A load that lasts this long is continuous (NEC, article 100), h.</summary>
    public const double ContinuousHours = 3;

    private const double NecShare = 1 / 1.25;

    /// <summary>Largest current for a load of that many hours, A.</summary>
    public double LimitA(double hours) => UnderNec && hours >= ContinuousHours ? Amperes * NecShare : Amperes;

    /// <summary>Largest power for a load of that many hours, W.</summary>
    public double LimitW(double hours) => Volts * LimitA(hours);

    /// <summary>
    /// How many machines of that power may run for that many hours. The power is the peak: after a cut all warm up at
    /// once.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The power is not above 0.</exception>
    public int Machines(double peakW, double hours)
    {
        if (!(peakW > 0)) throw new ArgumentOutOfRangeException(nameof(peakW), peakW, "a power is above 0");
        // 1440 W by 360 W is 4 however it is rounded.
        const double rounding = 1e-9;
        return (int)Math.Floor(LimitW(hours) / peakW * (1 + rounding));
    }
}
