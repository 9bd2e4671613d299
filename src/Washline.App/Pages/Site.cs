using System.Net;
using System.Text.Encodings.Web;
using System.Text.Unicode;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.WebUtilities;
using Washline.App.Storage;

namespace Washline.App.Pages;

/// <summary>The bench in the browser: pages over one bar file, for this computer only.</summary>
public static class Site
{
    // Everything comes from here; nothing is fetched from anywhere else, and no page may stand inside another.
    private const string ContentPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /// <summary>The site, not yet started.</summary>
    /// <param name="file">The bar it shows and changes.</param>
    /// <param name="port">The port on loopback, 1 to 65 535; 0 for one that is not in use.</param>
    public static WebApplication Make(BarFile file, int port)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory, ApplicationName = "washline" });
        builder.Configuration.Sources.Clear();
        builder.Logging.ClearProviders().SetMinimumLevel(LogLevel.Error).AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace)
            // A page left open since yesterday, or a port in use, is no failure: the person is told in other words.
            .AddFilter("Microsoft.AspNetCore.Antiforgery", LogLevel.None).AddFilter("Microsoft.Extensions.Hosting", LogLevel.None);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 1 << 20;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        builder.Services.Configure<HostFilteringOptions>(hosts => (hosts.AllowedHosts, hosts.AllowEmptyHosts) = (["localhost", "127.0.0.1", "[::1]"], false));
        builder.Services.AddRazorComponents();
        builder.Services.AddSingleton(HtmlEncoder.Create(UnicodeRanges.All));
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddAntiforgery(forgery => (forgery.Cookie.Name, forgery.Cookie.SameSite) = ("washline", SameSiteMode.Strict));
        var site = builder.Build();
        site.UseHostFiltering();
        site.Use(Guarded);
        site.Use(Headed);
        site.UseExceptionHandler(failed => failed.Run(Failed));
        site.UseStatusCodePages(Astray);
        site.UseRouting();
        site.UseAntiforgery();
        WebFiles.Map(site);
        Routes.Map(site, new Shelf(file));
        return site;
    }

    private static Task Guarded(HttpContext context, RequestDelegate next)
    {
        // At the last moment, because a page about a failure begins with no headers at all.
        context.Response.OnStarting(() =>
        {
            var headers = context.Response.Headers;
            headers.ContentSecurityPolicy = ContentPolicy;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "same-origin";
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            return Task.CompletedTask;
        });
        return next(context);
    }

    // HEAD is answered as GET is; the server leaves the page itself out.
    private static Task Headed(HttpContext context, RequestDelegate next)
    {
        if (HttpMethods.IsHead(context.Request.Method))
        {
            context.Request.Method = HttpMethods.Get;
            context.Response.OnStarting(() =>
            {
                context.Request.Method = HttpMethods.Head;
                return Task.CompletedTask;
            });
        }

        return next(context);
    }

    private static Task Failed(HttpContext context)
    {
        var refusal = context.Features.Get<IExceptionHandlerFeature>()?.Error as Refusal;
        return Routes.Show<LostPage>(new()
        {
            ["Title"] = "Stopped",
            ["What"] = refusal?.What ?? "The program met something it does not know how to go on from.",
            ["Try"] = refusal?.Try ?? "Nothing was changed. What happened is written where the program was started.",
        }, 500).ExecuteAsync(context);
    }

    private static Task Astray(StatusCodeContext context)
    {
        var code = context.HttpContext.Response.StatusCode;
        var (what, to) = code switch
        {
            404 => ("There is nothing at this address.", "The specs and the bar are one tap away."),
            400 => ("This page was too old to act on: the program has been started again since it was loaded, or the form did not come from here.", "Go back, load the page again, and do it once more. Nothing was changed."),
            413 => ("That was more text than a spec can be.", "Paste one spec at a time, a megabyte at most."),
            _ => ("That did not work.", "Nothing was changed. Go back and try it another way."),
        };
        return Routes.Show<LostPage>(new() { ["What"] = what, ["Try"] = to, ["Title"] = ReasonPhrases.GetReasonPhrase(code) }, code).ExecuteAsync(context.HttpContext);
    }
}
