using System.Net;
using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Json;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Platewright.Report;
using Platewright.Server.Answers;
using Platewright.Server.Endpoints;
using Platewright.Server.Guarding;
using Platewright.Server.Runs;
using Platewright.Server.Shelf;
using Platewright.Study.Documents;

namespace Platewright.Server;

/// <summary>
/// The local app: the page and its API on the loopback address, for whoever sits at this machine. Anybody who may use this machine may use it.
/// </summary>
public sealed class LocalApp : IAsyncDisposable
{
    /// <summary>A recipe or a study file is a page, not a data set; uploads have their own limit.</summary>
    private const long MostBytes = 16 << 20;

    private readonly WebApplication _app;

    private LocalApp(WebApplication app) => _app = app;

    /// <summary>Where it answers, as <c>http://localhost:5000</c>; known once it was started.</summary>
    public Uri Address => new($"http://localhost:{new Uri(_app.Urls.First()).Port}");

    /// <summary>Sets it up and starts to answer.</summary>
    /// <param name="settings">Where it keeps things and listens.</param>
    /// <param name="cancel">Stops the start.</param>
    /// <exception cref="IOException">The port is in use, or the store cannot be written.</exception>
    public static async Task<LocalApp> Start(LocalAppSettings settings, CancellationToken cancel)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ApplicationName = "Platewright.Server" });
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.Listen(IPAddress.Loopback, settings.Port);
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = MostBytes;
        });
        builder.Logging.ClearProviders();
        builder.Logging.AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace).SetMinimumLevel(LogLevel.Error);
        StudyShelf shelf = new(settings.Store, settings.Clock);
        shelf.Sweep();
        StudyRuns.Recover(shelf);
        builder.Services.AddSingleton(settings).AddSingleton(shelf).AddSingleton(new Library(settings.Store)).AddSingleton<StudyRuns>();
        builder.Services.Configure<JsonOptions>(json =>
        {
            json.SerializerOptions.PropertyNamingPolicy = DocumentJson.Compact.PropertyNamingPolicy;
            json.SerializerOptions.NumberHandling = JsonNumberHandling.Strict;
            json.SerializerOptions.Encoder = DocumentJson.Compact.Encoder;
        });
        builder.Services.AddOpenApi("v1", ApiDescription.Describe);
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(30));

        WebApplication app = builder.Build();
        AppPage page = AppPage.Create();
        ILogger log = app.Services.GetRequiredService<ILogger<LocalApp>>();
        app.Use(PageHeaders.Of(page.ScriptSource));
        app.Use((context, next) => RefusalHandler.Run(context, next, log));
        app.Use(SameOriginGuard.Run);
        MapAll(app, page, settings);
        await app.StartAsync(cancel);
        return new LocalApp(app);
    }

    /// <summary>The study of a file or folder, opened and started; its page.</summary>
    /// <exception cref="Formats.Toml.DescriptionException">It cannot be read.</exception>
    public Uri Open(string path)
    {
        KeptStudy study = _app.Services.GetRequiredService<StudyShelf>().OpenFrom(path);
        _app.Services.GetRequiredService<StudyRuns>().Start(study);
        return new Uri(Address, $"/study/{Uri.EscapeDataString(study.Id)}");
    }

    /// <summary>Answers until it is cancelled, then stops what runs; what is finished is kept.</summary>
    public async Task Run(CancellationToken cancel)
    {
        try
        {
            await Task.Delay(Timeout.Infinite, cancel);
        }
        catch (OperationCanceledException)
        {
            // That is how it ends.
        }
        await _app.StopAsync(CancellationToken.None);
    }

    public ValueTask DisposeAsync() => _app.DisposeAsync();

    private static void MapAll(WebApplication app, AppPage page, LocalAppSettings settings)
    {
        RouteGroupBuilder api = app.MapGroup("/api").WithTags("app");
        StudyEndpoints.Map(api);
        SettingsEndpoints.Map(api);
        FileEndpoints.Map(api, settings);
        RunEndpoints.Map(api);
        ResultEndpoints.Map(api);
        MachineEndpoints.Map(api, settings);
        NameEndpoints.Map(api);
        app.MapOpenApi("/api/openapi.json");
        app.Map("/api/{**rest}", (string? rest) => Refused.Missing($"There is no /api/{rest}.")).ExcludeFromDescription();
        // Every other address is a place in the one page.
        app.MapGet("/{**place}", () => Results.Text(page.Html, "text/html")).ExcludeFromDescription();
    }
}
