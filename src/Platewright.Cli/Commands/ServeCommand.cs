using System.CommandLine;
using Platewright.Formats.Toml;
using Platewright.Server;
using Platewright.Study.Store;
using Spectre.Console;

namespace Platewright.Cli.Commands;

/// <summary><c>platewright serve [PATH]</c>: the local app.</summary>
internal static class ServeCommand
{
    private const int UsualPort = 5118;

    public static Command Create(Screen screen, CancellationToken cancel)
    {
        Argument<string?> path = new("PATH")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = "A study file (.toml) or a folder of models to open and start; its files stay where they are.",
        };
        path.Validators.Add(Options.RefuseOptions);
        Option<int> port = new("--port")
        {
            HelpName = "N",
            Description = $"Port on the loopback address (default: {UsualPort}; 0 takes a free one).",
            DefaultValueFactory = _ => UsualPort,
        };
        port.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 0 or > 65535) result.AddError("--port: expected a number from 0 to 65535.");
        });
        Option<string?> storeFolder = Options.Store();
        Command command = new(
            "serve", "The local app: drop files, describe machines, run studies, change assumptions. Only this machine can reach it.")
        {
            path, port, storeFolder,
        };
        command.SetAction(async (parsed, _) =>
        {
            string kept = parsed.GetValue(storeFolder) ?? StoreFolder.Usual();
            await using LocalApp app = await Listening(new LocalAppSettings(kept, parsed.GetValue(port)), cancel);
            Uri address = parsed.GetValue(path) is { } opened ? app.Open(opened) : app.Address;
            screen.Result.WriteLine($"Platewright is at {address}");
            screen.Error.WriteLine("Ctrl-C ends it; what was finished is kept.");
            await app.Run(cancel);
            return ExitCode.Done;
        });
        return command;
    }

    private static async Task<LocalApp> Listening(LocalAppSettings settings, CancellationToken cancel)
    {
        try
        {
            return await LocalApp.Start(settings, cancel);
        }
        catch (IOException e) when (settings.Port != 0)
        {
            throw new DescriptionException(new DescriptionError(
                $"nothing can listen there ({e.Message.TrimEnd('.')}); another --port, or --port 0 for any free one.", Key: "--port"));
        }
    }
}
