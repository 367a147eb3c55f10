using System.Collections.Immutable;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Sizing.Money;

namespace Platewright.Study;

/// <summary>Reads <c>[cost]</c>: what is assumed about money; each number may have a range beside it in <c>[cost.range]</c>.</summary>
internal static class MoneyReader
{
    private static readonly NumberRange Amount = new(0, 1_000_000);

    private static readonly NumberRange Share = new(0, 1);

    /// <summary>Where everything fails nothing is ever made.</summary>
    private static readonly NumberRange Failing = new(0, 0.95);

    private static readonly NumberRange Years = NumberRange.Positive(100, "years");

    private static readonly NumberRange Hours = new(0, 10_000, "h");

    private static readonly NumberRange Minutes = new(0, 10_000, "min");

    private static readonly NumberRange Rate = NumberRange.Positive(1_000_000);

    private static readonly string[] Workshops = ["practised", "tended", "open"];

    public static CostAssumptions Read(TomlTable root)
    {
        CostAssumptions usual = new();
        if (root.Table("cost") is not { } cost) return usual;
        TomlTable? range = cost.Table("range");
        Guess failures = cost.Word("workshop", Workshops) is { } kind
            ? Failures.Of((WorkshopKind)Array.IndexOf(Workshops, kind))
            : usual.FailureShare;
        CostAssumptions read = usual with
        {
            Currency = Currency(cost, "currency") ?? usual.Currency,
            EnergyPerKwh = Of("energy_per_kwh", Amount, usual.EnergyPerKwh),
            LabourPerH = Of("labour_per_h", Amount, usual.LabourPerH),
            TaxShare = Of("tax_share", Share, usual.TaxShare),
            FilamentPerKg = Of("filament_per_kg", Amount, usual.FilamentPerKg),
            FailureShare = Of("failure_share", Failing, failures),
            LifeYears = Of("life_years", Years, usual.LifeYears),
            ResidualShare = Of("residual_share", Share, usual.ResidualShare),
            AssembleH = Of("assemble_h", Hours, usual.AssembleH),
            TuneHPerYear = Of("tune_h_per_year", Hours, usual.TuneHPerYear),
            MaintainHPer100H = Of("maintain_h_per_100h", Hours, usual.MaintainHPer100H),
            WearSharePer100H = Of("wear_share_per_100h", Share, usual.WearSharePer100H),
            PrepareMin = Of("prepare_min", Minutes, usual.PrepareMin),
            RemoveMin = Of("remove_min", Minutes, usual.RemoveMin),
            LookMin = Of("look_min", Minutes, usual.LookMin),
        };
        return read;

        Guess Of(string key, NumberRange allowed, Guess otherwise)
        {
            Guess guess = cost.Number(key, allowed) is { } stated ? Guess.Stated(stated) : otherwise;
            if (range?.Numbers(key, 2, allowed, "low and high") is not { } ends) return guess;
            if (ends[0] > guess.Value || ends[1] < guess.Value)
            {
                range.Refuse(key, $"expected a range around {guess.Value}, low first.");
                return guess;
            }
            return guess with { Low = ends[0], High = ends[1], Source = Guess.StudyFile };
        }
    }

    /// <summary>What one of each other currency is worth in that of the costs.</summary>
    public static ImmutableSortedDictionary<string, decimal> Exchange(TomlTable root)
    {
        var rates = ImmutableSortedDictionary.CreateBuilder<string, decimal>(StringComparer.Ordinal);
        if (root.Table("cost") is not { } cost) return rates.ToImmutable();
        foreach (TomlTable table in cost.Tables("exchange"))
        {
            string? currency = Currency(table, "currency", required: true);
            double? rate = table.Number("rate", Rate, required: true);
            if (currency is null || rate is not { } value) continue;
            if (!rates.TryAdd(currency, (decimal)value)) table.Refuse("currency", $"{currency} has a rate already.");
        }
        return rates.ToImmutable();
    }

    /// <summary>A table with <c>amount</c> and <c>currency</c>.</summary>
    public static Price? Price(TomlTable table)
    {
        double? amount = table.Number("amount", Amount, required: true);
        string? currency = Currency(table, "currency", required: true);
        return amount is { } value && currency is not null ? new Price((decimal)value, currency) : null;
    }

    private static string? Currency(TomlTable table, string key, bool required = false)
    {
        string? currency = table.Text(key, required);
        if (currency is null || (currency.Length == 3 && currency.All(char.IsAsciiLetterUpper))) return currency;
        table.Refuse(key, $"expected three capital letters of ISO 4217, as \"EUR\", found \"{currency}\".");
        return null;
    }
}
