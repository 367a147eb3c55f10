namespace Platewright.Formats.Reading;

/// <summary>Coordinates out of a text, refused by line where they are none.</summary>
internal static class TextNumber
{
    /// <summary>The next word as a coordinate in mm, on this or a later line.</summary>
    /// <param name="scale">Length of the file's unit, mm.</param>
    public static double Coordinate(ref TextScanner scanner, double scale, ReadRequest request)
    {
        scanner.TryWord(out ReadOnlySpan<byte> word);
        return Coordinate(word, ref scanner, scale, request);
    }

    /// <summary>The word just taken (empty for none) as a coordinate in mm.</summary>
    public static double Coordinate(ReadOnlySpan<byte> word, ref TextScanner scanner, double scale, ReadRequest request)
    {
        if (DecimalNumber.TryParse(word, out double number))
        {
            double mm = number * scale;
            if (ReadRequest.IsInRange(mm)) return mm;
        }
        throw Refusal(word, $"line {scanner.LineOf(scanner.Position)}", request);
    }

    /// <summary>Why the word is no coordinate.</summary>
    public static ModelFileException Refusal(ReadOnlySpan<byte> word, string place, ReadRequest request)
    {
        if (word.IsEmpty) return request.Refuse(place, "a number is missing");
        if (DecimalNumber.TryParse(word, out _))
            return request.Refuse(place, $"the coordinate {TextScanner.Show(word)} is too large", "check the unit");
        return word.Contains((byte)',')
            ? request.Refuse(place, $"{TextScanner.Show(word)} is not a number", "export it again with a decimal point")
            : request.Refuse(place, $"{TextScanner.Show(word)} is not a number");
    }
}
