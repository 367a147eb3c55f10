using CsCheck;
using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

/// <summary>Damaged files: whatever a slip of hand or disk makes of a file, it reads or is refused with sentences.</summary>
public sealed class MachineFileMutationTests
{
    private const string Pieces = "\"'[]{}=.,#\n 0-1eE+_\\\0\tä∞truenaninf";

    [Fact]
    public void Parse_DamagedFile_ReadsOrIsRefusedWithSentences() =>
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, FullMachine.Text.Length - 1], Gen.Int[0, 40], Gen.Int[0, Pieces.Length - 1])
            .Array[1, 4]
            .Sample(changes =>
            {
                string text = FullMachine.Text;
                foreach ((int kind, int at, int length, int piece) in changes) text = Changed(text, kind, at, length, piece);
                try
                {
                    Machine machine = MachineFile.Parse(text, "damaged.toml");
                    Assert.True(machine.BuildVolume.HeightMm > 0);
                }
                catch (DescriptionException e)
                {
                    Assert.All(e.Errors, error => Assert.False(string.IsNullOrWhiteSpace(error.Message)));
                    Assert.All(e.Errors, error => Assert.Equal("damaged.toml", error.File));
                }
            });

    private static string Changed(string text, int kind, int at, int length, int piece)
    {
        if (text.Length == 0) return text;
        int from = at % text.Length;
        int to = Math.Min(text.Length, from + length);
        return kind switch
        {
            0 => text[..from],
            1 => text.Remove(from, to - from),
            2 => text.Insert(from, text[from..to]),
            _ => text[..from] + Pieces[piece] + text[(from + 1)..],
        };
    }
}
