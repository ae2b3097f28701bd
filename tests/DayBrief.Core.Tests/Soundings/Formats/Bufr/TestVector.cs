namespace DayBrief.Soundings.Formats.Bufr;

/// <summary>An invented ascent of three levels in edition 4, template 3 09 052, encoded by hand from the tables and
/// decoded without error by ecCodes 2.28.</summary>
internal static class TestVector
{
    public static byte[] Bytes { get; } = Convert.FromHexString(
        "4255465200009a040000160000ff000000000204001f0007e906150c000000000900000180c93400006f0018ac"
        + "ffffffffffffffffffd8fff793f4b2ab0de689deca3f6362207610428166bfffffffffffffffc000d000400012d"
        + "90166912a8808954403847b74dbc005505ca000121101c2912a9768953c537edb6e4be80a10c90400109a027411"
        + "2aaec8955443711b5a9fffffc00037373737");

    public static BufrMessage Message => BufrMessage.Open(Bytes, 0);
}
