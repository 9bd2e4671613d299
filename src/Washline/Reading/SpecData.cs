using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Washline.Drinks;
using Washline.Reading.Data;

namespace Washline.Reading;

/// <summary>Specs as recipe data after schema.org (JSON-LD) that <see cref="Draft.TakeIn"/> reads back equal.</summary>
/// <remarks>
/// What schema.org has no place for, such as ice and glass, stands in <c>additionalProperty</c> under the names of docs/spec-text.md.
/// Letters that mean something in HTML are escaped, so the answer may stand inside a page.
/// </remarks>
public static class SpecData
{
    private static readonly JsonWriterOptions Form = new() { Indented = true, Encoder = JavaScriptEncoder.Create(UnicodeRanges.All), NewLine = "\n" };

    /// <summary>One object for one spec, a <c>@graph</c> for any other number of them; ends in a line feed.</summary>
    public static string Write(IReadOnlyList<Spec> specs, Kinds kinds)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Form))
        {
            json.WriteStartObject();
            json.WriteString("@context", "https://schema.org");
            if (specs.Count == 1)
            {
                Members(json, specs[0], kinds);
            }
            else
            {
                json.WriteStartArray("@graph");
                foreach (var spec in specs)
                {
                    json.WriteStartObject();
                    Members(json, spec, kinds);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }

            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    // The spec's own text, line by line: what each line was read as says where it goes.
    private static void Members(Utf8JsonWriter json, Spec spec, Kinds kinds)
    {
        var read = Draft.Read(SpecText.Write(spec), kinds).Account;
        var ingredients = read.Where(a => a.ReadAs is ReadAs.Ingredient or ReadAs.Problem).Select(a => a.Text).ToList();
        var named = read.Where(a => a.ReadAs is not (ReadAs.Title or ReadAs.Ingredient or ReadAs.Problem)).Select(a => KeyLine.Of(a.Text)).OfType<KeyLine>().ToList();
        json.WriteString("@type", "Recipe");
        json.WriteString("name", PlainWords.Escaped(string.Join(' ', SourceLine.Plain(spec.Title).Split(' ', StringSplitOptions.RemoveEmptyEntries))));
        json.WriteStartArray("recipeIngredient");
        foreach (var ingredient in ingredients) Ingredient(json, ingredient);
        json.WriteEndArray();
        foreach (var key in named.Where(k => k.Key == Key.Method && IsStep(k.Value)))
        {
            json.WriteStartArray("recipeInstructions");
            json.WriteStartObject();
            json.WriteString("@type", "HowToStep");
            json.WriteString("text", PlainWords.Escaped(key.Value));
            json.WriteEndObject();
            json.WriteEndArray();
        }

        foreach (var key in named.Where(k => k.Key == Key.Maker)) Named(json, "author", "Person", key.Value);
        foreach (var key in named.Where(k => k.Key == Key.Where)) Named(json, "locationCreated", "Place", key.Value);
        json.WriteStartArray("additionalProperty");
        foreach (var key in named.Where(k => !(k.Key is Key.Maker or Key.Where || k.Key == Key.Method && IsStep(k.Value)))) Property(json, key.Name, key.Value);
        json.WriteEndArray();
    }

    private static bool IsStep(string words) => RecipeLines.Step(Placed.Of(words, 0, words.Length)).Name == "method: ";

    private static void Ingredient(Utf8JsonWriter json, string line)
    {
        if (IngredientWords.Split(Placed.Of(line, 0, line.Length)).ToList() is [var one] && IngredientWords.Of(one) is { Name: "" }) json.WriteStringValue(PlainWords.Escaped(line));
        else Property(json, "ingredient", line);
    }

    private static void Named(Utf8JsonWriter json, string property, string type, string name)
    {
        json.WriteStartObject(property);
        json.WriteString("@type", type);
        json.WriteString("name", PlainWords.Escaped(name));
        json.WriteEndObject();
    }

    private static void Property(Utf8JsonWriter json, string name, string value)
    {
        json.WriteStartObject();
        json.WriteString("@type", "PropertyValue");
        json.WriteString("name", name);
        json.WriteString("value", PlainWords.Escaped(value));
        json.WriteEndObject();
    }
}
