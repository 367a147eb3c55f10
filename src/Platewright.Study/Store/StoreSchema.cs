using Microsoft.Data.Sqlite;

namespace Platewright.Study.Store;

/// <summary>How the store's database is opened, laid out, bounded, and what its failures mean to a user.</summary>
internal static class StoreSchema
{
    public const string FileName = "store.db";

    /// <summary>Layout of the tables. A store of a newer version is refused.</summary>
    public const int Version = 1;

    // "PLTW": tells our store from any other database.
    private const int ApplicationId = 0x504C5457;
    private const int BusyTimeoutSeconds = 60;
    private const int CorruptCode = 11;
    private const int NotADatabaseCode = 26;
    private const int FullCode = 13;
    private const int BusyCode = 5;
    private const int DroppedAtOnce = 256;

    private const string Tables = """
        CREATE TABLE results(key BLOB PRIMARY KEY NOT NULL, stage TEXT NOT NULL, value BLOB NOT NULL);
        CREATE TABLE files(path TEXT PRIMARY KEY NOT NULL, length INTEGER NOT NULL, modified INTEGER NOT NULL, hash TEXT NOT NULL);
        """;

    public static SqliteConnection Connect(string path)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = SqliteOpenMode.ReadWriteCreate,
            Pooling = false,
            DefaultTimeout = BusyTimeoutSeconds,
        }.ToString());
        connection.Open();
        return connection;
    }

    /// <exception cref="StoreException">The database is not ours, or of a newer version.</exception>
    public static void Prepare(SqliteConnection connection, string path)
    {
        Execute(connection, $"PRAGMA busy_timeout = {BusyTimeoutSeconds * 1000}");
        // Write-ahead log: readers and one writer at once. NORMAL: a killed process loses nothing that was committed.
        Execute(connection, "PRAGMA journal_mode = WAL");
        Execute(connection, "PRAGMA synchronous = NORMAL");
        // The version is read inside the write lock, so that of two processes that start at once only one lays out the tables.
        using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
        long version = Number(connection, "PRAGMA user_version", transaction);
        long tables = Number(connection, "SELECT COUNT(*) FROM sqlite_master", transaction);
        if (version == 0 && tables == 0)
        {
            Execute(connection, $"{Tables} PRAGMA application_id = {ApplicationId}; PRAGMA user_version = {Version};", transaction);
            transaction.Commit();
            return;
        }
        if (Number(connection, "PRAGMA application_id", transaction) != ApplicationId)
            throw new StoreException($"{path} is a database of another program; name another folder with --store.");
        if (version > Version)
        {
            throw new StoreException(
                $"{path} was written by a newer version of platewright (store version {version}, this one knows {Version}); " +
                "use that version, or name another folder with --store.");
        }
    }

    public static bool Trim(SqliteConnection connection, long bytes)
    {
        bool dropped = false;
        while (UsedBytes(connection) > bytes && Number(connection, "SELECT EXISTS(SELECT 1 FROM results)") == 1)
        {
            Execute(connection,
                $"DELETE FROM results WHERE rowid IN (SELECT rowid FROM results ORDER BY rowid LIMIT {DroppedAtOnce})");
            dropped = true;
        }
        return dropped;
    }

    public static StoreException Explain(string path, SqliteException e) => e.SqliteErrorCode switch
    {
        CorruptCode or NotADatabaseCode => new StoreException(
            $"{path} is damaged ({e.Message.TrimEnd('.')}); delete it or name another folder with --store: " +
            "it holds only results that can be computed again.", e),
        FullCode => new StoreException($"{path} cannot grow: the disk is full; free some space or name another folder with --store.", e),
        BusyCode => new StoreException($"{path} was in use by another process for more than {BusyTimeoutSeconds} s; try again.", e),
        _ => new StoreException($"{path} cannot be used ({e.Message.TrimEnd('.')}); name another folder with --store.", e),
    };

    private static long UsedBytes(SqliteConnection connection) =>
        (Number(connection, "PRAGMA page_count") - Number(connection, "PRAGMA freelist_count")) *
        Number(connection, "PRAGMA page_size");

    private static long Number(SqliteConnection connection, string query, SqliteTransaction? transaction = null)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = query;
        command.Transaction = transaction;
        return Convert.ToInt64(command.ExecuteScalar());
    }

    private static void Execute(SqliteConnection connection, string statement, SqliteTransaction? transaction = null)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = statement;
        command.Transaction = transaction;
        command.ExecuteNonQuery();
    }
}
