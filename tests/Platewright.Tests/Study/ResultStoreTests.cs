using System.Text;
using Microsoft.Data.Sqlite;
using Platewright.Study.Store;

namespace Platewright.Tests.Study;

public sealed class ResultStoreTests
{
    private static readonly ResultKey Key = ResultKey.Of(Stage.Fit, ["part", "machine"], "tight=2");

    [Fact]
    public void Keep_ThenFind_GivesTheSameBytesAfterReopening()
    {
        using ScratchFolder folder = new();
        using (ResultStore store = ResultStore.Open(folder.Path))
        {
            Assert.Null(store.Find(Key));
            store.Keep(Key, Stage.Fit, [1, 2, 3]);
        }
        using ResultStore again = ResultStore.Open(folder.Path);
        Assert.Equal([1, 2, 3], again.Find(Key));
    }

    [Fact]
    public void Find_WhileAnotherStoreIsOpen_SeesWhatItKept()
    {
        using ScratchFolder folder = new();
        using ResultStore writer = ResultStore.Open(folder.Path);
        using ResultStore reader = ResultStore.Open(folder.Path);
        writer.Keep(Key, Stage.Fit, [7]);
        Assert.Equal([7], reader.Find(Key));
    }

    [Fact]
    public async Task Keep_FromManyThreadsAndStores_LosesNothing()
    {
        using ScratchFolder folder = new();
        const int Stores = 4, Each = 200;
        await Task.WhenAll(Enumerable.Range(0, Stores).Select(s => Task.Run(() =>
        {
            using ResultStore store = ResultStore.Open(folder.Path);
            Parallel.For(0, Each, i => store.Keep(Numbered(s, i), Stage.Fit, [(byte)s, (byte)i]));
        }, TestContext.Current.CancellationToken)));

        using ResultStore all = ResultStore.Open(folder.Path);
        for (int s = 0; s < Stores; s++)
        {
            for (int i = 0; i < Each; i++) Assert.Equal([(byte)s, (byte)i], all.Find(Numbered(s, i))!);
        }

        static ResultKey Numbered(int store, int item) => ResultKey.Of(Stage.Fit, [$"{store}", $"{item}"], "");
    }

    [Fact]
    public void RecogniseFile_AfterChangeOfLengthOrTime_KnowsItNoMore()
    {
        using ScratchFolder folder = new();
        using ResultStore store = ResultStore.Open(folder.Path);
        FileStamp stamp = new("/models/a.stl", 100, 5000);
        store.RememberFile(stamp, "abc");
        Assert.Equal("abc", store.RecogniseFile(stamp));
        Assert.Null(store.RecogniseFile(stamp with { Length = 101 }));
        Assert.Null(store.RecogniseFile(stamp with { ModifiedTicks = 5001 }));
    }

    [Fact]
    public void FileStamp_JustWritten_IsNotSettled()
    {
        DateTime written = new(2020, 1, 1, 12, 0, 0, DateTimeKind.Utc);
        FileStamp stamp = new("/models/a.stl", 100, written.Ticks);
        Assert.False(stamp.IsSettled(written.AddSeconds(1)));
        Assert.True(stamp.IsSettled(written.AddSeconds(3)));
    }

    [Fact]
    public void Open_DamagedFile_SaysWhichAndWhatToDo()
    {
        using ScratchFolder folder = new();
        File.WriteAllText(folder["store.db"], new string('x', 5000));
        StoreException e = Assert.Throws<StoreException>(() => ResultStore.Open(folder.Path));
        Assert.Contains("store.db is damaged", e.Message, StringComparison.Ordinal);
        Assert.Contains("--store", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_NewerStore_SaysSo()
    {
        using ScratchFolder folder = new();
        ResultStore.Open(folder.Path).Dispose();
        Change(folder["store.db"], "PRAGMA user_version = 99");
        StoreException e = Assert.Throws<StoreException>(() => ResultStore.Open(folder.Path));
        Assert.Contains("newer version", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_DatabaseOfAnotherProgram_IsLeftAlone()
    {
        using ScratchFolder folder = new();
        Change(folder["store.db"], "CREATE TABLE theirs(x)");
        StoreException e = Assert.Throws<StoreException>(() => ResultStore.Open(folder.Path));
        Assert.Contains("another program", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_WhereAFileIsInTheWay_SaysSo()
    {
        using ScratchFolder folder = new();
        File.WriteAllText(folder["taken"], "");
        StoreException e = Assert.Throws<StoreException>(() => ResultStore.Open(Path.Combine(folder.Path, "taken", "store")));
        Assert.Contains("--store", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Trim_DropsTheOldestFirst()
    {
        using ScratchFolder folder = new();
        using ResultStore store = ResultStore.Open(folder.Path);
        byte[] big = Encoding.UTF8.GetBytes(new string('a', 4096));
        ResultKey[] keys = [.. Enumerable.Range(0, 1000).Select(i => ResultKey.Of(Stage.Fit, [$"{i}"], ""))];
        foreach (ResultKey key in keys) store.Keep(key, Stage.Fit, big);
        store.Trim(2_000_000);
        Assert.Null(store.Find(keys[0]));
        Assert.NotNull(store.Find(keys[^1]));
    }

    [Fact]
    public void ResultKey_ChangesWithEveryIngredient()
    {
        ResultKey[] keys =
        [
            ResultKey.Of(Stage.Fit, ["a", "b"], "o"),
            ResultKey.Of(Stage.Need, ["a", "b"], "o"),
            ResultKey.Of(Stage.Fit with { Version = 99 }, ["a", "b"], "o"),
            ResultKey.Of(Stage.Fit, ["b", "a"], "o"),
            ResultKey.Of(Stage.Fit, ["ab"], "o"),
            ResultKey.Of(Stage.Fit, ["a", "b"], "p"),
            ResultKey.Of(Stage.Fit, ["a", "b"], "o", seed: 1),
        ];
        Assert.Distinct(keys);
        Assert.Equal(keys[0], ResultKey.Of(Stage.Fit, ["a", "b"], "o"));
    }

    private static void Change(string path, string statement)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = statement;
        command.ExecuteNonQuery();
    }
}
