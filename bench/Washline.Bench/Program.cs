using BenchmarkDotNet.Running;
using Washline.Bench;

switch (args.FirstOrDefault())
{
    case Startup.Nothing:
        return 0;
    case "startup":
        return Startup.Measure(args.Skip(1).FirstOrDefault() is { } n ? int.Parse(n, System.Globalization.CultureInfo.InvariantCulture) : 15);
    case "fits":
        return Fits.Measure(args.Skip(1).FirstOrDefault() is { } fits ? int.Parse(fits, System.Globalization.CultureInfo.InvariantCulture) : 60, "bench/fits.svg");
    case "tonight":
        return Evening.Measure(args.Skip(1).FirstOrDefault() is { } specs ? int.Parse(specs, System.Globalization.CultureInfo.InvariantCulture) : 10_000);
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Startup).Assembly).Run(args);
        return 0;
}
