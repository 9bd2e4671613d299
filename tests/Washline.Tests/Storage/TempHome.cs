using Washline.Tests.Commands;

namespace Washline.Tests.Storage;

/// <summary>A folder with a bar file that is gone afterwards.</summary>
public sealed class TempHome : IDisposable
{
    public TempHome() => Directory.CreateDirectory(Folder);

    public string Folder { get; } = System.IO.Path.Combine(System.IO.Path.GetTempPath(), "washline-" + Guid.NewGuid().ToString("N"));

    public string Bar => Path("bar.washline");

    public string Path(string name) => System.IO.Path.Combine(Folder, name);

    public string Write(string name, string text)
    {
        File.WriteAllText(Path(name), text);
        return Path(name);
    }

    /// <summary>Runs a command line on this home's bar.</summary>
    public Typed Run(params string[] args) => Typed.Run([.. args, "--bar", Bar]);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
