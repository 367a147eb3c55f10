using Microsoft.Data.Sqlite;
using Platewright.Tests.Study;

namespace Platewright.Tests.Cli;

/// <summary>Ctrl-C, a kill at any moment, and two processes on one store lose nothing that was finished.</summary>
public sealed class InterruptionTests : IDisposable
{
    private const int Parts = 12;

    private readonly ScratchFolder _folder = new();

    public InterruptionTests()
    {
        for (int i = 0; i < Parts; i++) TestModels.WriteLump(_folder["models", $"lump{i:00}.stl"], seed: i, rings: 8);
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Study_Interrupted_Exits130AndGoesOnFromThere()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There is no SIGINT to send on Windows.");
        using BuiltCommand first = Start("store", "first");
        WaitForResults("store", 10, first);
        first.Interrupt();
        CommandResult interrupted = first.WaitForEnd();
        Assert.Equal(130, interrupted.ExitCode);
        Assert.Contains("kept", interrupted.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(_folder["first", "study.json"]));

        int kept = Results("store");
        CommandResult second = Finish(Start("store", "second"));
        Assert.Contains($"Found in the store: {kept}.", second.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Study_KilledAgainAndAgain_EndsWithTheSameResult()
    {
        Finish(Start("calm-store", "calm"));
        int known = 0;
        for (int kill = 0; kill < 4; kill++)
        {
            using BuiltCommand command = Start("store", "rough");
            WaitForResults("store", known + 5 + 9 * kill, command);
            command.Kill();
            command.WaitForEnd();
            int now = Results("store");
            Assert.True(now >= known, $"{known} results were kept, {now} are left.");
            known = now;
        }
        Finish(Start("store", "rough"));
        Assert.Equal(StudyResults.Json(_folder["calm"]), StudyResults.Json(_folder["rough"]));
    }

    [Fact]
    public void Study_TwoAtOnceOnOneStore_BothEndWithTheSameResult()
    {
        using BuiltCommand one = Start("store", "one"), two = Start("store", "two");
        Assert.Equal(0, one.WaitForEnd().ExitCode);
        Assert.Equal(0, two.WaitForEnd().ExitCode);
        Assert.Equal(StudyResults.Json(_folder["one"]), StudyResults.Json(_folder["two"]));
    }

    private BuiltCommand Start(string store, string results) =>
        BuiltCommand.Start(
            null, "study", _folder["models"], "--store", _folder[store], "--out", _folder[results],
            "--machine", "generic-105-open", "--machine", "generic-210-enclosed", "--machine", "generic-330-enclosed");

    private static CommandResult Finish(BuiltCommand command)
    {
        using (command)
        {
            CommandResult result = command.WaitForEnd();
            Assert.Equal(0, result.ExitCode);
            return result;
        }
    }

    private void WaitForResults(string store, int count, BuiltCommand command)
    {
        while (!command.HasEnded && Results(store) < count) Thread.Sleep(5);
    }

    private int Results(string store)
    {
        string path = _folder[store, "store.db"];
        if (!File.Exists(path)) return 0;
        using var connection = new SqliteConnection($"Data Source={path};Mode=ReadOnly;Pooling=False");
        try
        {
            connection.Open();
            using SqliteCommand query = connection.CreateCommand();
            query.CommandText = "SELECT COUNT(*) FROM results";
            return Convert.ToInt32(query.ExecuteScalar());
        }
        catch (SqliteException)
        {
            return 0; // Not laid out yet.
        }
    }
}
