using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Washline.App.Storage;

namespace Washline.App.Pages;

/// <summary>Every address of the site.</summary>
internal static class Routes
{
    private const int FewSpecs = 40; // fitted in well under a second
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    public static void Map(IEndpointRouteBuilder site, Shelf shelf)
    {
        site.MapGet("/", IResult (HttpResponse answer) =>
        {
            var bar = shelf.Load();
            if (bar.IsEmpty) return Show<WelcomePage>([]);
            var fits = shelf.FitsWithin(bar, PatienceFor(bar));
            if (fits.Any(f => f.Fit is null)) answer.Headers["Refresh"] = "2"; // seconds; what is being looked for then is there
            return Show<SpecsPage>(new() { ["Fits"] = fits, ["Bar"] = bar });
        });
        site.MapPost("/demo", ([FromForm] string? lay) =>
        {
            if (shelf.Load().IsEmpty) Demo.LayOut(shelf.File);
            return To("/");
        });
        site.MapGet("/spec/{title}", IResult (string title, HttpRequest asked) =>
            Bench.Of(Asked.Of(BenchAddress.Title(title), asked.Query), shelf) is { } bench ? Show<BenchPage>(new() { ["Bench"] = bench }) : Nowhere(BenchAddress.Title(title)));
        site.MapPost("/spec/{title}/keep", IResult (string title, IFormCollection form) =>
        {
            if (Bench.Of(Asked.Of(BenchAddress.Title(title), form.Where(f => f.Key == "pour")), shelf)?.Kept is not { } kept) return Nowhere(BenchAddress.Title(title));
            shelf.File.Change(bar => bar with { HousePours = [.. bar.HousePours.Where(p => !Bench.Same(p.Spec, kept.Spec)), kept] });
            return To(BenchAddress.Of(kept.Spec, "kept"));
        });
        site.MapPost("/spec/{title}/ice", IResult (string title, IFormCollection form) =>
        {
            if (shelf.Load().Spec(BenchAddress.Title(title)) is not { } spec || form["ice"].ToString() is not ("wet" or "freezer")) return Nowhere(BenchAddress.Title(title));
            shelf.File.Change(bar => bar with { Settings = bar.Settings with { IceWet = form["ice"] == "wet" } });
            return To(Asked.Of(spec.Title, form).Address);
        });
        site.MapGet("/tonight", (HttpResponse answer) =>
        {
            var bar = shelf.Load();
            var (tonight, waiting) = shelf.TonightWithin(bar, PatienceFor(bar));
            if (waiting > 0) answer.Headers["Refresh"] = "2";
            return Show<TonightPage>(new() { ["Tonight"] = tonight, ["Waiting"] = waiting });
        });
        site.MapGet("/bar", () => Show<BarPage>(new() { ["Bar"] = shelf.Load() }));
        site.MapGet("/read", () => Show<ReadPage>([]));
        site.MapPost("/read", async Task<IResult> (IFormCollection form) =>
        {
            if (form.Files["file"] is { Length: > 0 } file)
            {
                using var bytes = new MemoryStream();
                await file.CopyToAsync(bytes);
                return Show<ReadPage>(new() { ["Reading"] = Pasted.Of(FileText.Of(bytes.ToArray(), file.FileName).Text, shelf.Load(), file.FileName) });
            }

            if (ReadDraft.Placed(form) is { } placed) shelf.File.Change(bar => Household.With(bar with { Words = [.. bar.Words.Where(w => !Household.Same(w.Words, placed.Words))] }, placed));
            var reading = Pasted.Of(form, shelf.Load());
            if (!form.ContainsKey("keep") || !reading.MayBeKept(form.ContainsKey("replace"))) return Show<ReadPage>(new() { ["Reading"] = reading });
            shelf.File.Change(reading.Into);
            return To(BenchAddress.Of(reading.Taken[0].Title));
        });
        site.MapFallback(() => Results.NotFound());
    }

    private static TimeSpan PatienceFor(Drinks.Bar bar) => bar.Specs.Count <= FewSpecs ? Timeout.InfiniteTimeSpan : Patience;

    /// <summary>A page with what it shows.</summary>
    public static RazorComponentResult<T> Show<T>(Dictionary<string, object?> shown, int status = 200) where T : IComponent =>
        new(shown) { StatusCode = status, PreventStreamingRendering = true };

    private static RazorComponentResult<LostPage> Nowhere(string title) => Show<LostPage>(new()
    {
        ["Title"] = "Not Found",
        ["What"] = $"No spec called “{title}” is kept here.",
        ["Try"] = "It may have been renamed: look through the specs, or paste it in.",
    }, 404);

    // 303: whatever was posted, the next page is fetched.
    private static SeeOther To(string address) => new SeeOther(address);
}
