using System.Globalization;
using System.Text;

namespace DayBrief.Logs;

/// <summary>A flight made from straight pieces and circles in a known wind, written as a recorder would write it. Nobody flew it.</summary>
internal sealed class MadeFlight
{
    private const double MetresPerDegree = 6_371_000 * Math.PI / 180;

    private readonly StringBuilder _records = new();
    private readonly int _interval;
    private readonly double _startLatitude = 48;
    private readonly double _startLongitude = 9;
    private double _east;
    private double _north;
    private double _heading;
    private int _second = 36_000;

    public MadeFlight(int intervalS) => _interval = intervalS;

    public double AirspeedMs { get; init; } = 27;

    public double WindEastMs { get; init; } = 5;

    public double WindNorthMs { get; init; } = -2;

    public double HeightM { get; private set; } = 500;

    public int Fixes { get; private set; }

    /// <summary>Flies on: seconds, degrees a second (positive to the right), climb.</summary>
    public MadeFlight Fly(int seconds, double turnDegS, double climbMs)
    {
        for (var i = 0; i < seconds * 10; i++)
        {
            _heading += 0.1 * turnDegS * Math.PI / 180;
            _east += 0.1 * ((AirspeedMs * Math.Sin(_heading)) + WindEastMs);
            _north += 0.1 * ((AirspeedMs * Math.Cos(_heading)) + WindNorthMs);
            HeightM += 0.1 * climbMs;
            if (i % 10 == 9 && ++_second % _interval == 0)
                Write();
        }

        return this;
    }

    public byte[] File(string head = "AXXX123\r\nHFDTE120726\r\n", string lineEnd = "\r\n") =>
        Encoding.Latin1.GetBytes(head + _records.ToString().Replace("\n", lineEnd, StringComparison.Ordinal) + "G1234" + lineEnd);

    private void Write()
    {
        var latitude = _startLatitude + (_north / MetresPerDegree);
        var longitude = _startLongitude + (_east / (MetresPerDegree * Math.Cos(_startLatitude * Math.PI / 180)));
        var time = TimeSpan.FromSeconds(_second % 86_400);
        _records.Append(CultureInfo.InvariantCulture, $"B{time:hhmmss}{Angle(latitude, 2)}N{Angle(longitude, 3)}EA{HeightM:00000}{HeightM + 40:00000}\n");
        Fixes++;
    }

    private static string Angle(double degrees, int figures)
    {
        var thousandths = (long)Math.Round(degrees * 60_000);
        return (thousandths / 60_000).ToString(new string('0', figures), CultureInfo.InvariantCulture)
            + (thousandths % 60_000).ToString("00000", CultureInfo.InvariantCulture);
    }
}
