using Microsoft.Data.Sqlite;

namespace Platewright.Study.Store;

/// <summary>
/// Finished results on disk, under their keys: an SQLite database that several processes may use at once. What
/// <see cref="Keep"/> has returned from survives a kill at any moment. Safe for use from several threads.
/// </summary>
public sealed class ResultStore : IDisposable
{
    private readonly Lock _gate = new();
    private readonly SqliteConnection _connection;
    private readonly string _path;
    private readonly SqliteCommand _find;
    private readonly SqliteCommand _keep;
    private readonly SqliteCommand _recognise;
    private readonly SqliteCommand _remember;

    private ResultStore(string path, SqliteConnection connection)
    {
        _path = path;
        _connection = connection;
        _find = Command("SELECT value FROM results WHERE key = $key", "$key");
        _keep = Command(
            "INSERT INTO results(key, stage, value) VALUES ($key, $stage, $value) ON CONFLICT(key) DO NOTHING",
            "$key", "$stage", "$value");
        _recognise = Command(
            "SELECT hash FROM files WHERE path = $path AND length = $length AND modified = $modified",
            "$path", "$length", "$modified");
        _remember = Command(
            "INSERT OR REPLACE INTO files(path, length, modified, hash) VALUES ($path, $length, $modified, $hash)",
            "$path", "$length", "$modified", "$hash");
    }

    /// <summary>Opens the store in <paramref name="folder"/>, making both where they are absent.</summary>
    /// <exception cref="StoreException">The folder cannot be written, or the store is damaged or of a newer version.</exception>
    public static ResultStore Open(string folder)
    {
        string path = Path.Combine(Path.GetFullPath(folder), StoreSchema.FileName);
        return Guarded(path, () =>
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            SqliteConnection connection = StoreSchema.Connect(path);
            try
            {
                StoreSchema.Prepare(connection, path);
                return new ResultStore(path, connection);
            }
            catch
            {
                connection.Dispose();
                throw;
            }
        });
    }

    /// <summary>The result kept under <paramref name="key"/>, or null.</summary>
    public byte[]? Find(ResultKey key) => Run(_find, command => (byte[]?)command.ExecuteScalar(), key.ToBytes());

    /// <summary>Keeps a finished result. A second result under one key changes nothing: they are equal.</summary>
    public void Keep(ResultKey key, Stage stage, byte[] value) =>
        Run(_keep, command => command.ExecuteNonQuery(), key.ToBytes(), stage.Name, value);

    /// <summary>The content hash of the file as it was when it last had this stamp, or null.</summary>
    public string? RecogniseFile(FileStamp stamp) =>
        Run(_recognise, command => (string?)command.ExecuteScalar(), stamp.Path, stamp.Length, stamp.ModifiedTicks);

    /// <summary>Remembers what a file with this stamp contains.</summary>
    public void RememberFile(FileStamp stamp, string contentHash) =>
        Run(_remember, command => command.ExecuteNonQuery(), stamp.Path, stamp.Length, stamp.ModifiedTicks, contentHash);

    /// <summary>Drops the results that were kept first until the store takes no more than <paramref name="bytes"/>.</summary>
    public void Trim(long bytes)
    {
        lock (_gate)
        {
            Guarded(_path, () => StoreSchema.Trim(_connection, bytes));
        }
    }

    public void Dispose()
    {
        lock (_gate)
        {
            foreach (SqliteCommand command in new[] { _find, _keep, _recognise, _remember }) command.Dispose();
            _connection.Dispose();
        }
    }

    private T Run<T>(SqliteCommand command, Func<SqliteCommand, T> execute, params ReadOnlySpan<object> values)
    {
        lock (_gate)
        {
            for (int i = 0; i < values.Length; i++) command.Parameters[i].Value = values[i];
            return Guarded(_path, () => execute(command));
        }
    }

    private SqliteCommand Command(string text, params ReadOnlySpan<string> parameters)
    {
        SqliteCommand command = _connection.CreateCommand();
        command.CommandText = text;
        foreach (string parameter in parameters) command.Parameters.Add(new SqliteParameter { ParameterName = parameter });
        return command;
    }

    private static T Guarded<T>(string path, Func<T> action)
    {
        try
        {
            return action();
        }
        catch (SqliteException e)
        {
            throw StoreSchema.Explain(path, e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreException($"{path}: the store's folder cannot be made ({e.Message}); name another with --store.", e);
        }
    }
}
