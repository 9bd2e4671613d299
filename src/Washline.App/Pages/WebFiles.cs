using System.Reflection;
using System.Security.Cryptography;

namespace Washline.App.Pages;

/// <summary>The style sheets and the framework's script: inside the program, so that they are there wherever it is started.</summary>
internal static class WebFiles
{
    private static readonly Dictionary<string, byte[]> Files = new()
    {
        ["washline.css"] = Bytes("washline.css"),
        ["bench.css"] = Bytes("bench.css"),
        ["read.css"] = Bytes("read.css"),
        ["blazor.web.js"] = Bytes("blazor.web.js"),
    };

    /// <summary>The address of a file; it changes whenever the file does, so that browsers may keep it for good.</summary>
    public static string At(string name) => $"/_/{Convert.ToHexStringLower(SHA256.HashData(Files[name]).AsSpan(0, 6))}/{name}";

    public static void Map(IEndpointRouteBuilder site)
    {
        foreach (var (name, bytes) in Files)
        {
            var type = name.EndsWith(".css", StringComparison.Ordinal) ? "text/css; charset=utf-8" : "text/javascript; charset=utf-8";
            site.MapGet(At(name), (HttpContext context) =>
            {
                context.Response.Headers.CacheControl = "public, max-age=31536000, immutable";
                return Results.Bytes(bytes, type);
            });
        }
    }

    private static byte[] Bytes(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("web/" + name)!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
