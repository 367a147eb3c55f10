using System.Diagnostics;

namespace Platewright.Tests.Server;

/// <summary>The app as its users start it: the built binary, in a process that is killed at the end.</summary>
internal sealed class ServedApp : IDisposable
{
    private readonly Process _process;

    private ServedApp(Process process, Uri address) => (_process, Address) = (process, address);

    public Uri Address { get; }

    public static async Task<ServedApp> Start(string store)
    {
        string name = OperatingSystem.IsWindows() ? "platewright.exe" : "platewright";
        ProcessStartInfo start = new(Path.Combine(AppContext.BaseDirectory, name)) { RedirectStandardOutput = true, UseShellExecute = false };
        foreach (string argument in (string[])["serve", "--port", "0", "--store", store]) start.ArgumentList.Add(argument);
        Process process = Process.Start(start)!;
        const string before = "Platewright is at ";
        while (await process.StandardOutput.ReadLineAsync() is { } line)
            if (line.StartsWith(before, StringComparison.Ordinal)) return new ServedApp(process, new Uri(line[before.Length..].Trim()));
        throw new InvalidOperationException("The app ended before it said where it is.");
    }

    public void Dispose()
    {
        _process.Kill();
        _process.WaitForExit();
        _process.Dispose();
    }
}
