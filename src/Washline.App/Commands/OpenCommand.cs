using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Washline.App.Pages;

namespace Washline.App.Commands;

/// <summary><c>washline open</c>: the bench in the browser, for this computer only.</summary>
public static class OpenCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var port = new Option<int>("--port") { Description = "The port to listen on, 1 to 65535; one that is not in use when left out.", HelpName = "N" };
        port.CustomParser = typed =>
        {
            var said = typed.Tokens.Count == 1 ? typed.Tokens[0].Value : "";
            if (int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n is >= 1 and <= 65535) return n;
            typed.AddError($"A port is a number from 1 to 65535; it was {said}.");
            return 0;
        };
        var quiet = new Option<bool>("--no-browser") { Description = "Only print the address; open no browser." };
        var command = new Verb("open", "Opens the bench in the browser: specs, the bench of one spec, the bar. Only this computer can see it.", "washline open", "washline open --port 8040 --no-browser") { port, quiet };
        command.SetAction(async (result, stop) =>
        {
            await using var site = Site.Make(result.OpenBar(), result.GetValue(port));
            await Start(site, result.GetValue(port), stop);
            var address = AddressOf(site);
            await result.Output().WriteLineAsync($"Washline is open at {address}  (stop with Ctrl+C)".AsMemory(), stop);
            if (!result.GetValue(quiet)) Browse(address);
            await site.WaitForShutdownAsync(stop);
            return 0;
        });
        return command;
    }

    /// <summary>Where a started site listens.</summary>
    internal static string AddressOf(WebApplication site) =>
        site.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.Single();

    private static async Task Start(WebApplication site, int port, CancellationToken stop)
    {
        try
        {
            await site.StartAsync(stop);
        }
        catch (IOException)
        {
            throw new Refusal($"Port {port} is in use, or this user may not listen on it.", "Leave --port out, and one that is not in use is taken.");
        }
    }

    // A home without a browser, or a server without a screen, is no mistake: the address has been printed.
    private static void Browse(string address)
    {
        try
        {
            if (OperatingSystem.IsWindows()) Process.Start(new ProcessStartInfo(address) { UseShellExecute = true })?.Dispose();
            else if (OperatingSystem.IsMacOS()) Process.Start("open", [address])?.Dispose();
            else if (Environment.GetEnvironmentVariable("DISPLAY") is { Length: > 0 } || Environment.GetEnvironmentVariable("WAYLAND_DISPLAY") is { Length: > 0 })
                Process.Start(new ProcessStartInfo("xdg-open", [address]) { RedirectStandardError = true, RedirectStandardOutput = true })?.Dispose();
        }
        catch (Exception e) when (e is Win32Exception or FileNotFoundException)
        {
        }
    }
}
