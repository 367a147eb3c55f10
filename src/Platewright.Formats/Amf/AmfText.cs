using Platewright.Formats.Reading;
using Platewright.Formats.Xml;

namespace Platewright.Formats.Amf;

/// <summary>The small elements of AMF: numbers, colours and metadata as text.</summary>
internal static class AmfText
{
    public static double TakeNumber(XmlWalk walk)
    {
        string text = walk.Text();
        return text.Length > 0 ? walk.Number(text) : throw walk.Refuse("a number is missing");
    }

    public static int TakeIndex(XmlWalk walk) => walk.Index(walk.Text());

    /// <summary>The first entry of a type counts.</summary>
    public static void TakeMetadata(XmlWalk walk, Dictionary<string, string> metadata)
    {
        string? type = walk.Attribute("type");
        string text = walk.Text();
        if (type is not null && text.Length > 0) metadata.TryAdd(type, text);
    }

    /// <summary>#RRGGBB; null for a colour that is a formula.</summary>
    public static string? TakeColour(XmlWalk walk)
    {
        double?[] shares = [null, null, null];
        int entered = walk.Enter();
        while (walk.NextChild(entered))
        {
            int channel = walk.Name switch { "r" => 0, "g" => 1, "b" => 2, _ => -1 };
            if (channel < 0) continue;
            if (XmlNumbers.TryNumber(walk.Text(), out double share)) shares[channel] = share;
        }
        return shares is [{ } r, { } g, { } b] ? Colours.FromShares(r, g, b) : null;
    }
}
