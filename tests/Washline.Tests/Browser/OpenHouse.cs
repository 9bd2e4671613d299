using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Washline.App;
using Washline.App.Pages;
using Washline.App.Storage;

namespace Washline.Tests.Browser;

/// <summary>A bar file of its own with the site open on a port that was not in use.</summary>
public sealed class OpenHouse : IAsyncDisposable
{
    private readonly DirectoryInfo folder;
    private readonly WebApplication site;

    private OpenHouse(DirectoryInfo folder, BarFile file, WebApplication site) => (this.folder, File, this.site) = (folder, file, site);

    public BarFile File { get; }

    public string Address => site.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();

    public static async Task<OpenHouse> Open(bool demo = false)
    {
        var folder = Directory.CreateTempSubdirectory("washline");
        var file = BarFile.Open(Path.Combine(folder.FullName, "bar.washline"));
        if (demo) Demo.LayOut(file);
        var site = Site.Make(file, 0);
        await site.StartAsync(TestContext.Current.CancellationToken);
        return new OpenHouse(folder, file, site);
    }

    /// <summary>A page as text.</summary>
    public async Task<string> Get(string path)
    {
        using var client = new HttpClient();
        return await client.GetStringAsync(new Uri(Address + path), TestContext.Current.CancellationToken);
    }

    public async ValueTask DisposeAsync()
    {
        await site.DisposeAsync();
        folder.Delete(recursive: true);
    }
}
