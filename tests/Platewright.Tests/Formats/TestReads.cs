using System.Text;
using Platewright.Formats;

namespace Platewright.Tests.Formats;

/// <summary>Reading as the tests do it: under the test's own cancellation.</summary>
internal static class TestReads
{
    public static ModelReading Disk(string path, string? shownAs = null, ReadLimits? limits = null) =>
        ModelReader.Read(path, shownAs, limits, unit: null, TestContext.Current.CancellationToken);

    public static ModelReading Memory(
        string name, byte[] content, ReadLimits? limits = null, LengthUnit? unit = null) =>
        ModelReader.Read(name, content, limits, unit, TestContext.Current.CancellationToken);

    public static ModelReading Text(string name, string content) => Memory(name, Encoding.UTF8.GetBytes(content));

    /// <summary>The one file that was read, with nothing refused.</summary>
    public static ModelFile Good(ModelReading reading)
    {
        Assert.Empty(reading.Unusable);
        return Assert.Single(reading.Files);
    }

    /// <summary>The one sentence, with nothing read.</summary>
    /// <param name="says">Words it must hold.</param>
    public static UnusableFile Refused(ModelReading reading, string says = "")
    {
        Assert.Empty(reading.Files);
        UnusableFile unusable = Assert.Single(reading.Unusable);
        TestContext.Current.TestOutputHelper?.WriteLine(unusable.Message);
        Assert.StartsWith(unusable.File, unusable.Message, StringComparison.Ordinal);
        Assert.EndsWith(".", unusable.Message, StringComparison.Ordinal);
        Assert.Contains(says, unusable.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("\n", unusable.Message, StringComparison.Ordinal);
        return unusable;
    }
}
