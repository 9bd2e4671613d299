namespace Washline.Tests;

/// <summary>Where the repository lies, for tests that read its files.</summary>
public static class House
{
    public static string Root { get; } = typeof(House).Assembly
        .GetCustomAttributes(typeof(System.Reflection.AssemblyMetadataAttribute), false)
        .Cast<System.Reflection.AssemblyMetadataAttribute>()
        .Single(a => a.Key == "RepositoryRoot").Value!;

    /// <summary>A number from the environment, for the long runs of <c>./test</c>; nothing where there is none.</summary>
    public static long? Number(string variable) =>
        long.TryParse(Environment.GetEnvironmentVariable(variable), System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : null;

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);
}
