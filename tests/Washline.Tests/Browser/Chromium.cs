using Microsoft.Playwright;

namespace Washline.Tests.Browser;

/// <summary>One headless Chromium for all browser tests. Where there is none, they are skipped with a sentence.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
    private IPlaywright? playwright;
    private IBrowser? browser;

    public async ValueTask InitializeAsync()
    {
        if (Places.FirstOrDefault(File.Exists) is not { } path) return;
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = path,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    /// <summary>A page in a browser of its own.</summary>
    public async Task<IPage> Page(OpenHouse house, bool script = true, int width = 1280, int height = 900)
    {
        if (browser is null) Assert.Skip("There is no Chromium here; install Debian's chromium to run the browser tests.");
        var context = await browser.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = house.Address,
            JavaScriptEnabled = script,
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ReducedMotion = ReducedMotion.Reduce,
        });
        context.SetDefaultTimeout(10_000);
        return await context.NewPageAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        playwright?.Dispose();
    }
}
