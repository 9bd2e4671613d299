using BenchmarkDotNet.Running;
using Washline.Bench;

switch (args.FirstOrDefault())
{
    case Startup.Nothing:
        return 0;
    case "startup":
        return Startup.Measure(args.Skip(1).FirstOrDefault() is { } n ? int.Parse(n, System.Globalization.CultureInfo.InvariantCulture) : 15);
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Startup).Assembly).Run(args);
        return 0;
}
