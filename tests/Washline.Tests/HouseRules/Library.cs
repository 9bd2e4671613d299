using System.Text.RegularExpressions;
using System.Xml.Linq;
using Washline.Drinks;

namespace Washline.Tests.HouseRules;

public partial class Library
{
    private static readonly string[] Rooms = ["Measures", "Mixtures", "Drinks", "Reading", "Fitting", "Evenings"];

    [Fact]
    public void A_room_names_only_rooms_before_it()
    {
        var wrong = new List<string>();
        foreach (var folder in Directory.EnumerateDirectories(House.Path("src", "Washline")))
        {
            var room = Path.GetFileName(folder);
            Assert.Contains(room, Rooms);
            var later = Rooms[(Array.IndexOf(Rooms, room) + 1)..];
            foreach (var file in Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories))
            {
                var code = Comment().Replace(File.ReadAllText(file), "");
                wrong.AddRange(later.Where(l => Regex.IsMatch(code, $@"(\busing (Washline\.)?{l};)|(\bWashline\.{l}\b)|((?<![\w.]){l}\.[A-Z])"))
                    .Where(l => !Regex.IsMatch(code, $@"\b{l} {{ get;")) // a property of that name, as bar.Measures
                    .Select(l => $"{room}/{Path.GetFileName(file)} names {l}"));
            }
        }

        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
    }

    [Fact]
    public void The_library_knows_no_web_database_or_terminal()
    {
        var names = typeof(Kind).Assembly.GetReferencedAssemblies().Select(a => a.Name!).ToList();
        string[] outside = ["Microsoft.AspNetCore", "Microsoft.Data", "Microsoft.Extensions", "Dapper", "Spectre", "System.CommandLine", "System.Net", "System.Console", "System.Diagnostics.Process"];
        Assert.DoesNotContain(names, n => outside.Any(o => n.StartsWith(o, StringComparison.Ordinal)));
        Assert.Contains("System.Runtime", names);
    }

    [Fact]
    public void Every_public_type_says_what_it_is()
    {
        var assembly = typeof(Kind).Assembly;
        var told = XDocument.Load(Path.ChangeExtension(assembly.Location, ".xml")).Descendants("member")
            .Where(m => m.Element("summary") is { } summary && summary.Value.Trim().Length > 0)
            .Select(m => (string)m.Attribute("name")!).ToHashSet();
        var silent = assembly.GetExportedTypes().Where(t => !told.Contains("T:" + t.FullName!.Replace('+', '.'))).Select(t => t.FullName).ToList();
        Assert.True(silent.Count == 0, "Without a summary: " + string.Join(", ", silent));
    }

    [Fact]
    public void A_file_holds_one_public_type_and_has_its_name()
    {
        var wrong = new List<string>();
        foreach (var file in Directory.EnumerateFiles(House.Path("src", "Washline"), "*.cs", SearchOption.AllDirectories))
        {
            var types = PublicType().Matches(File.ReadAllText(file)).Select(m => m.Groups[1].Value).ToList();
            var name = Path.GetFileNameWithoutExtension(file).Split('.')[0];
            if (types.Count > 1 || (types.Count == 1 && types[0] != name)) wrong.Add($"{Path.GetFileName(file)}: {string.Join(", ", types)}");
        }

        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
    }

    [GeneratedRegex(@"//[^\n]*")]
    private static partial Regex Comment();

    [GeneratedRegex(@"^public (?:static |sealed |abstract |readonly |partial |ref )*(?:class|record struct|record|struct|enum|interface|delegate \w+) (\w+)", RegexOptions.Multiline)]
    private static partial Regex PublicType();
}
