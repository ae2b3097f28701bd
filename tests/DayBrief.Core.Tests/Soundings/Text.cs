using System.Text;

namespace DayBrief.Soundings;

/// <summary>Reads text as the service would, and catches the refusal of what must be refused.</summary>
internal static class Text
{
    public static Sounding Read(string text) => SoundingReader.Read(Encoding.UTF8.GetBytes(text), "test");

    /// <summary>The one answer that the input gets.</summary>
    public static Refusal Refused(string text) => Refused(Encoding.UTF8.GetBytes(text));

    public static Refusal Refused(byte[] bytes) =>
        Assert.Single(Assert.Throws<InvalidSoundingException>(() => SoundingReader.Read(bytes, "test")).Refusals);
}
