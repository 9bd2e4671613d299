namespace Washline.Tests.Browser;

/// <summary>All browser tests share one Chromium.</summary>
[CollectionDefinition(Name)]
public sealed class InTheBrowser : ICollectionFixture<Chromium>
{
    public const string Name = "in the browser";
}
