using System.Diagnostics;

namespace Washline.Tests.Storage;

/// <summary>The program in a process of its own, so that it can be killed.</summary>
internal static class RealProgram
{
    public static Process Start(params string[] args)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "washline.dll"), .. args])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        var process = Process.Start(start)!;
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }
}
