namespace Washline.Tests;

/// <summary>Where the repository lies, for tests that read its files.</summary>
public static class House
{
    public static string Root { get; } = typeof(House).Assembly
        .GetCustomAttributes(typeof(System.Reflection.AssemblyMetadataAttribute), false)
        .Cast<System.Reflection.AssemblyMetadataAttribute>()
        .Single(a => a.Key == "RepositoryRoot").Value!;

    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);
}
