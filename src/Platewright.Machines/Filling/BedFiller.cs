using System.Globalization;

namespace Platewright.Machines;

/// <summary>
/// Power and heat capacity of the bed. Where the minutes to a temperature are known, they fix one of the two: the
/// capacity while it comes out as a bed can be, else the power.
/// </summary>
internal static class BedFiller
{
    private const string Power = "heating.bed.power_w";

    private const string Capacity = "heating.bed.capacity_j_k";

    private const string Area = "heating.bed.area_m2";

    // How well minutes are told, and how far still air differs from day to day: our choice.
    private const double TimingDoubt = 0.15;

    private const double SecondsPerMinute = 60;

    private const int Digits = 3;

    public static void Fill(KnownMachine known, Filling filling)
    {
        TypicalValue area = filling.TypicalOf(Area);
        filling.Set(Area, area.Value, area.Range, "the build surface; plates are often somewhat larger");
        (double power, ValueRange? doubt, string origin) = PowerOf(known, filling);
        if (doubt is { } range) filling.Set(Power, power, range, origin);
        else filling.Set(Power, power, origin);
        filling.SetTypical(Capacity);
        if (known.BedWarmUp is { } seen) Fit(seen, doubt, filling);
    }

    private static (double Power, ValueRange? Doubt, string Origin) PowerOf(KnownMachine known, Filling filling)
    {
        if (known.BedHeaterW is { } stated) return (stated, null, "stated");
        TypicalValue typical = filling.TypicalOf(Power);
        if (known.SupplyW is not { } supply) return (typical.Value, typical.Range, filling.OriginOf(typical));
        double rest = filling.ValueOf("heating.nozzle.power_w") + filling.ValueOf("heating.electronics_w")
            + filling.ValueOf("heating.motors_w");
        // A supply that cannot even serve the rest was told wrongly; half of it is left to the bed, and the note says so.
        if (supply < 2 * rest)
            filling.Tell($"A supply of {Text(supply)} W is little for a heated bed besides nozzle and motors; check its label.");
        double most = Math.Max(supply - rest, supply / 2);
        ValueRange range = new(Math.Min(typical.Range.Low, most), Math.Min(typical.Range.High, most));
        return (Math.Min(typical.Value, most), range,
            $"typical for {Text(filling.Kind.SurfaceM2 * 1e4)} cm² of bed, within what {Text(supply)} W leave for it");
    }

    private static void Fit(BedWarmUp seen, ValueRange? doubt, Filling filling)
    {
        double area = filling.ValueOf(Area), power = filling.ValueOf(Power), seconds = seen.Minutes * SecondsPerMinute;
        ValueRange usual = filling.TypicalOf(Capacity).Range;
        double fitting = BedHeating.CapacityFor(power, area, seen.ToC, seconds);
        double capacity = Math.Clamp(fitting, usual.Low, usual.High);
        if (capacity != fitting)
        {
            double needed = BedHeating.PowerFor(capacity, area, seen.ToC, seconds);
            bool possible = doubt is { } range && needed >= range.Low && needed <= range.High;
            if (!possible) filling.Tell(Odd(seen, power, fitting, usual));
            if (!possible && fitting == 0) return;
            (power, capacity) = possible ? (Significant.Round(needed, Digits), capacity) : (power, fitting);
        }
        ValueRange near = new(capacity * (1 - TimingDoubt), capacity * (1 + TimingDoubt));
        filling.Set(Capacity, capacity, near, $"from {Watched(seen)} with {Text(power)} W");
        // The minutes tie power to capacity: both vary together, and the doubt of the time is told once.
        if (doubt is not null) filling.Set(Power, power, "assumed; with the heat capacity it gives the minutes told");
    }

    private static string Odd(BedWarmUp seen, double power, double fitting, ValueRange usual) => fitting > 0
        ? $"{Watched(seen)} with {Text(power)} W would mean a bed of {Text(fitting)} J/K, outside what is usual for its size "
            + $"({Text(usual.Low)} to {Text(usual.High)}); check minutes and watts."
        : $"{Text(power)} W would never bring a bed of this size to {Text(seen.ToC)} °C; check minutes and watts.";

    private static string Watched(BedWarmUp seen) => $"{Text(seen.Minutes)} min to {Text(seen.ToC)} °C";

    private static string Text(double value) =>
        Significant.Round(value, Digits).ToString(CultureInfo.InvariantCulture);
}
