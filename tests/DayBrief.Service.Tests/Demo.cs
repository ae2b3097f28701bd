using System.Text;
using DayBrief.House;

namespace DayBrief.Service;

/// <summary>The invented demonstration ascents of the repository, and a site to use them at.</summary>
internal static class Demo
{
    public const string Site =
        """{"id":"demo","name":"Testing field","latitude":52.24,"longitude":-1.41,"elevationM":118,"timeZone":"Europe/London","groundCover":"crops","runways":[{"designator":"24","headingDeg":238,"surface":"grass"}]}""";

    public static string Path(string name) => System.IO.Path.Combine(Repository.Root, "soundings", name);

    public static string Text(string name) => File.ReadAllText(Path(name));

    public static StringContent Plain(string text) => new(text, Encoding.UTF8, "text/plain");

    public static StringContent Json(string text) => new(text, Encoding.UTF8, "application/json");
}
