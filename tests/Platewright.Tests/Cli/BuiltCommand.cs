using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Platewright.Tests.Cli;

/// <summary>The built binary, run as a process, as scripts run it.</summary>
internal sealed class BuiltCommand : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    private readonly Process _process;
    private readonly Task<string> _output;
    private readonly Task<string> _error;

    private BuiltCommand(ProcessStartInfo start)
    {
        _process = Process.Start(start)!;
        _output = _process.StandardOutput.ReadToEndAsync();
        _error = _process.StandardError.ReadToEndAsync();
    }

    public int Id => _process.Id;

    public bool HasEnded => _process.HasExited;

    public static CommandResult Run(params ReadOnlySpan<string> arguments)
    {
        using BuiltCommand command = Start(null, arguments);
        return command.WaitForEnd();
    }

    /// <param name="processors">How many processors the command believes to have; null for all.</param>
    /// <param name="arguments">As on the command line.</param>
    public static BuiltCommand Start(int? processors, params ReadOnlySpan<string> arguments)
    {
        string name = OperatingSystem.IsWindows() ? "platewright.exe" : "platewright";
        ProcessStartInfo start = new(Path.Combine(AppContext.BaseDirectory, name))
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        foreach (string argument in arguments) start.ArgumentList.Add(argument);
        if (processors is { } count) start.Environment["DOTNET_PROCESSOR_COUNT"] = $"{count}";
        return new BuiltCommand(start);
    }

    public CommandResult WaitForEnd()
    {
        if (!_process.WaitForExit(Patience)) Assert.Fail("The command did not end.");
        return new CommandResult(_process.ExitCode, _output.GetAwaiter().GetResult(), _error.GetAwaiter().GetResult());
    }

    public void Interrupt()
    {
        const int InterruptSignal = 2;
        if (NativeMethods.Kill(_process.Id, InterruptSignal) != 0) Assert.Fail("The command could not be interrupted.");
    }

    public void Kill() => _process.Kill();

    public void Dispose()
    {
        if (!_process.HasExited) _process.Kill();
        _process.Dispose();
    }

    private static class NativeMethods
    {
        [DllImport("libc", EntryPoint = "kill")]
        [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
        public static extern int Kill(int process, int signal);
    }
}

/// <summary>What a command said.</summary>
internal sealed record CommandResult(int ExitCode, string Output, string Error);
