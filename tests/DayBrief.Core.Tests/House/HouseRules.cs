using System.Text.RegularExpressions;

namespace DayBrief.House;

/// <summary>The layout's rules, as DEVELOPERS.md states them: who may use whom, sizes, names, links and references.</summary>
public sealed partial class HouseRules
{
    /// <summary>Folder → folders whose namespaces it may name. A folder always sees itself and its sub-folders.</summary>
    private static readonly Dictionary<string, string[]> CoreMayUse = new()
    {
        ["Units"] = [],
        ["Texts"] = [],
        ["Numerics"] = ["Units"],
        ["Thermodynamics"] = ["Units", "Numerics"],
        ["Soundings"] = ["Units", "Texts", "Numerics", "Thermodynamics"],
        ["Reports"] = ["Units", "Texts"],
        ["Updrafts"] = ["Units"],
        ["Logs"] = ["Units", "Texts", "Numerics"],
        ["Scores"] = ["Units", "Numerics", "Thermodynamics", "Soundings"],
        ["BoundaryLayer"] = ["Units", "Numerics", "Thermodynamics", "Soundings", "Updrafts"],
        ["Flight"] = ["Units", "Texts", "Numerics", "Updrafts"],
        ["Days"] = ["Units", "Texts", "Numerics", "Thermodynamics", "Soundings", "Reports", "Updrafts", "BoundaryLayer", "Flight"],
    };

    private static readonly Dictionary<string, string[]> ServiceMayUse = new()
    {
        ["Infrastructure"] = [],
        ["Languages"] = [],
        ["Charts"] = ["Languages"],
        ["Features/People"] = ["Infrastructure", "Languages"],
        ["Features/Sites"] = ["Infrastructure", "Languages", "Features.People"],
        ["Features/Soundings"] = ["Charts", "Infrastructure", "Languages", "Features.People"],
        ["Features/Actuals"] = ["Features.Arrivals", "Features.Sites", "Features.People", "Infrastructure", "Languages"],
        ["Features/Verifying"] = ["Charts", "Features.Actuals", "Features.Arrivals", "Features.Briefs", "Features.Sites", "Features.Soundings", "Features.People", "Infrastructure", "Languages"],
        ["Features/Flights"] = ["Features.Soundings", "Infrastructure"],
        ["Features/Technique"] = ["Charts", "Infrastructure", "Languages"],
        ["Features/Briefs"] = ["Charts", "Features.Sites", "Features.Soundings", "Features.Technique", "Features.People", "Infrastructure", "Languages"],
        ["Features/Desk"] = ["Charts", "Features.Sites", "Features.Soundings", "Features.Technique", "Features.People", "Features.Arrivals", "Features.Briefs", "Infrastructure", "Languages"],
        ["Features/Arrivals"] = ["Infrastructure", "Languages"],
        ["Features/Automation"] = ["Features.Sites", "Features.Soundings", "Features.People", "Features.Arrivals", "Features.Briefs", "Features.Desk", "Infrastructure", "Languages"],
        ["Features/Sending"] = ["Features.Arrivals", "Features.Sites", "Features.People", "Features.Briefs", "Infrastructure", "Languages"],
        ["Features/Phone"] = ["Features.Briefs", "Features.Sites", "Features.Technique", "Features.People", "Infrastructure", "Languages"],
        ["Features/Centring"] = ["Charts", "Infrastructure"],
        ["Commands"] = ["Charts", "Features.Flights", "Features.Verifying", "Features.Sites", "Features.Soundings", "Features.Technique", "Features.Briefs", "Features.Centring", "Infrastructure", "Languages"],
    };

    [Fact]
    public void Core_folders_use_only_what_lies_below_them() =>
        Assert.Empty(Trespasses(Repository.Core, "DayBrief", CoreMayUse));

    [Fact]
    public void Service_folders_use_only_what_lies_below_them() =>
        Assert.Empty(Trespasses(Repository.Service, "DayBrief.Service", ServiceMayUse));

    [Fact]
    public void Only_Numerics_names_MathNet() =>
        Assert.DoesNotContain(
            Repository.SourceFiles(Repository.Core, ".cs"),
            file => !Relative(Repository.Core, file).StartsWith("Numerics/", StringComparison.Ordinal)
                && File.ReadAllText(file).Contains("MathNet", StringComparison.Ordinal));

    [Fact]
    public void Core_references_only_the_framework_and_its_allowed_packages() =>
        Assert.DoesNotContain(
            typeof(Units.Pressure).Assembly.GetReferencedAssemblies().Select(assembly => assembly.Name!),
            name => !name.StartsWith("System", StringComparison.Ordinal) && name is not ("MathNet.Numerics" or "Sep"));

    [Fact]
    public void Files_stay_small()
    {
        var lengths = new[] { Repository.Core, Repository.Service }
            .SelectMany(folder => Repository.SourceFiles(folder, ".cs", ".razor"))
            .Select(file => (file, lines: File.ReadLines(file).Count()))
            .OrderBy(entry => entry.lines)
            .ToArray();
        Assert.DoesNotContain(lengths, entry => entry.lines > 400);
        Assert.True(lengths[(int)(0.95 * (lengths.Length - 1))].lines <= 250, "95 % of files have at most 250 lines");
        Assert.True(lengths[lengths.Length / 2].lines <= 80, "half the files have at most 80 lines");
    }

    [Fact]
    public void No_type_hides_behind_an_empty_name() =>
        Assert.DoesNotContain(
            new[] { Repository.Core, Repository.Service }.SelectMany(folder => Repository.SourceFiles(folder, ".cs", ".razor")),
            file => EmptyName().IsMatch(Path.GetFileNameWithoutExtension(file)));

    [Fact]
    public void Every_cited_key_is_listed_and_every_listed_key_is_cited()
    {
        var listed = ReferenceEntry().Matches(File.ReadAllText(Path.Combine(Repository.Root, "docs", "references.md")))
            .Select(match => match.Groups[1].Value).ToHashSet();
        var cited = new[] { Path.Combine(Repository.Root, "src"), Path.Combine(Repository.Root, "tests") }
            .SelectMany(folder => Repository.SourceFiles(folder, ".cs", ".razor"))
            .SelectMany(File.ReadLines)
            .Where(line => line.Contains("//", StringComparison.Ordinal))
            .Select(line => line[line.IndexOf("//", StringComparison.Ordinal)..])
            .SelectMany(line => CitedKey().Matches(line).Select(match => match.Groups[1].Value))
            .ToHashSet();
        Assert.Empty(cited.Except(listed));
        Assert.Empty(listed.Except(cited));
    }

    /// <summary>README, "Where is it computed?": every number leads to its file and its test.</summary>
    [Fact]
    public void Every_link_of_the_README_leads_somewhere()
    {
        var links = Link().Matches(File.ReadAllText(Path.Combine(Repository.Root, "README.md"))).Select(match => match.Groups[1].Value).ToArray();
        Assert.True(links.Length > 40, "the table of computations is there");
        Assert.DoesNotContain(links, link => !Path.Exists(Path.Combine(Repository.Root, link)));
    }

    internal static string Relative(string folder, string file) => Path.GetRelativePath(folder, file).Replace('\\', '/');

    private static IEnumerable<string> Trespasses(string project, string prefix, Dictionary<string, string[]> mayUse) =>
        from file in Repository.SourceFiles(project, ".cs", ".razor")
        let relative = Relative(project, file)
        from folder in mayUse.Keys
        where relative.StartsWith(folder + "/", StringComparison.Ordinal)
        from other in mayUse.Keys
        let ns = $"{prefix}.{other.Replace('/', '.')}"
        where other != folder && !mayUse[folder].Contains(other.Replace('/', '.'))
        where Regex.IsMatch(File.ReadAllText(file), $@"\b{Regex.Escape(ns)}\b")
        select $"{relative} uses {ns}";

    [GeneratedRegex(@"\]\(((?:src|tests|docs)/[^)]+|[A-Z]+(?:\.md)?)\)")]
    private static partial Regex Link();

    [GeneratedRegex("(Helper|Manager|Utils|Util|Common|Misc)s?$")]
    private static partial Regex EmptyName();

    [GeneratedRegex(@"^- \[([A-Za-z]+[A-Za-z0-9-]*)\]", RegexOptions.Multiline)]
    private static partial Regex ReferenceEntry();

    [GeneratedRegex(@"\[([A-Z][A-Za-z]*-?[0-9]+[A-Za-z]?|[A-Z]{2,}[A-Za-z0-9]*|MetPy|SeinfeldPandis|WallaceHobbs)\](?!\()")]
    private static partial Regex CitedKey();
}
