using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>Reads a table with an <c>amount</c> and a <c>currency</c>.</summary>
internal static class PriceReader
{
    public static Price? Read(TomlTable table)
    {
        double? amount = table.Number("amount", MachineRanges.Price, required: true);
        string? currency = table.Text("currency", required: true);
        if (currency is not null && !IsCurrency(currency))
            table.Refuse("currency", $"expected three capital letters of ISO 4217, as \"EUR\", found \"{currency}\".");
        return amount is { } value && currency is not null
            ? new Price(decimal.Round((decimal)value, 2), currency)
            : null;
    }

    private static bool IsCurrency(string text) => text.Length == 3 && text.All(char.IsAsciiLetterUpper);
}
