namespace Platewright.Server;

/// <summary>How the local app is set up.</summary>
/// <param name="Store">The folder of the store: results, and below it the studies, machines and recipes of the app.</param>
/// <param name="Port">On the loopback address; 0 takes a free one.</param>
public sealed record LocalAppSettings(string Store, int Port)
{
    /// <summary>Most bytes of one upload; 2 GiB by default.</summary>
    public long MostUploadBytes { get; init; } = 2L << 30;

    /// <summary>Most files in one upload; 20,000 by default.</summary>
    public int MostUploadFiles { get; init; } = 20_000;

    public TimeProvider Clock { get; init; } = TimeProvider.System;
}
