using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Washline.Bench;

/// <summary>How long the program takes to start, beside an empty program: every command once in each round, so that a busy machine disturbs all alike.</summary>
internal static partial class Startup
{
    /// <summary>The argument with which this program ends at once: the reference.</summary>
    public const string Nothing = "nothing";

    public static int Measure(int rounds)
    {
        var program = Program();
        if (program is null)
        {
            Console.Error.WriteLine("The program is not built; run: dotnet build src/Washline.App -c Release");
            return 1;
        }

        var home = Directory.CreateTempSubdirectory("washline-bench-");
        try
        {
            Environment.SetEnvironmentVariable("WASHLINE_BAR", Path.Combine(home.FullName, "bar.washline"));
            var open = new Command("washline open, first page served", program, "open", "--demo", "--no-browser") { Serves = true };
            Command[] commands =
            [
                new("an empty .NET program (reference)", typeof(Startup).Assembly.Location, Nothing),
                new("washline --help", program, "--help"),
                new("washline fit \"Breakwater Sour\" --demo", program, "fit", "Breakwater Sour", "--demo"),
                .. Knows(program, "open") ? new[] { open } : [],
            ];
            foreach (var command in commands) command.Run(); // the first start fills the file cache and lays the household out
            for (var i = 0; i < rounds; i++)
            {
                foreach (var command in commands) command.Runs.Add(command.Run());
            }

            Print(commands, rounds);
            return 0;
        }
        finally
        {
            home.Delete(recursive: true);
        }
    }

    private static void Print(Command[] commands, int rounds)
    {
        Console.WriteLine(FormattableString.Invariant($"{rounds} starts each, in turn; {Environment.ProcessorCount} cores"));
        Console.WriteLine();
        Console.WriteLine("| start | median, ms | least, ms | above the reference, ms | peak memory, MB |");
        Console.WriteLine("|---|---:|---:|---:|---:|");
        var reference = Median(commands[0].Runs.Select(r => r.Ms));
        foreach (var command in commands)
        {
            var ms = command.Runs.Select(r => r.Ms).ToList();
            var memory = command.Runs.Select(r => r.PeakMb).Where(mb => mb > 0).ToList();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {command.Name} | {Median(ms):0} | {ms.Min():0} | {Median(ms) - reference:0} | {(memory.Count > 0 ? Median(memory).ToString("0", CultureInfo.InvariantCulture) : "?")} |"));
        }
    }

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToArray();
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }

    // The program beside this one in the build's output folder.
    private static string? Program()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var file = Path.Combine(folder.FullName, "bin", "Washline.App", "release", "washline.dll");
            if (File.Exists(file)) return file;
        }

        return null;
    }

    private static bool Knows(string program, string command)
    {
        using var process = Start(program, [command, "--help"]);
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0;
    }

    private static Process Start(string dll, IEnumerable<string> args) => Process.Start(new ProcessStartInfo("dotnet", [dll, .. args])
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

    private sealed record Command(string Name, string Dll, params string[] Args)
    {
        public List<(double Ms, double PeakMb)> Runs { get; } = [];

        public bool Serves { get; init; }

        public (double Ms, double PeakMb) Run()
        {
            var clock = Stopwatch.StartNew();
            using var process = Start(Dll, Args);
            var errors = process.StandardError.ReadToEndAsync();
            var peak = 0.0;
            if (Serves)
            {
                ServeFirstPage(process);
                clock.Stop();
                peak = PeakMb(process);
                process.Kill();
                process.WaitForExit();
                return (clock.Elapsed.TotalMilliseconds, peak);
            }

            var output = process.StandardOutput.ReadToEndAsync();
            while (!process.WaitForExit(3)) peak = Math.Max(peak, PeakMb(process));
            clock.Stop();
            _ = output.Result;
            if (process.ExitCode != 0) throw new InvalidOperationException($"{Name} ended in {process.ExitCode}: {errors.Result}");
            return (clock.Elapsed.TotalMilliseconds, peak);
        }

        private void ServeFirstPage(Process process)
        {
            using var client = new HttpClient();
            while (process.StandardOutput.ReadLine() is { } line)
            {
                if (Address().Match(line) is not { Success: true } address) continue;
                client.GetStringAsync(new Uri(address.Value)).Wait();
                return;
            }

            throw new InvalidOperationException($"{Name} ended without saying where it is open.");
        }
    }

    // The system keeps the peak as long as the process lives; elsewhere than on Linux the framework asks for it.
    private static double PeakMb(Process process)
    {
        try
        {
            var status = $"/proc/{process.Id}/status";
            if (File.Exists(status))
            {
                return File.ReadLines(status).FirstOrDefault(l => l.StartsWith("VmHWM:", StringComparison.Ordinal)) is { } line
                    ? double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024 : 0;
            }

            process.Refresh();
            return process.PeakWorkingSet64 / 1048576.0;
        }
        catch (Exception e) when (e is IOException or InvalidOperationException)
        {
            return 0; // it has just ended
        }
    }

    [GeneratedRegex(@"http://[^\s]+")]
    private static partial Regex Address();
}
