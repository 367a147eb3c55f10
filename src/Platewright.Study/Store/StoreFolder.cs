namespace Platewright.Study.Store;

/// <summary>Where the store lies when nobody says.</summary>
public static class StoreFolder
{
    /// <summary>Below the user's data folder.</summary>
    /// <exception cref="StoreException">The system names no such folder.</exception>
    public static string Usual()
    {
        string data = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return data.Length > 0
            ? Path.Combine(data, "platewright")
            : throw new StoreException("This system names no folder for user data; say where the store shall lie with --store DIR.");
    }
}
