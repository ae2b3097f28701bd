using CsCheck;

namespace DayBrief.Soundings.Formats.Temp;

/// <summary>What is written by the rules of [WMO306] is read back: the writing side is here, and knows nothing of ours.</summary>
public sealed class TempCodingTests
{
    [Fact]
    public void Every_temperature_and_depression_is_read_back() =>
        Gen.Select(Gen.Int[-998, 599], Gen.Int[0, 94]).Sample((tenths, step) =>
        {
            // The code has only even tenths above zero and odd ones below.
            var coded = tenths >= 0 ? tenths - (tenths % 2) : tenths - (tenths % 2 == 0 ? 1 : 0);
            var depression = step <= 50 ? step / 10.0 : step - 45.0;
            var figures = step <= 50 ? step : step + 5;
            var group = new TempGroup($"{Math.Abs(coded):000}{figures:00}", 1);
            Assert.Equal(coded / 10.0, TempElements.Temperature(group)!.Value, tolerance: 1e-9);
            Assert.Equal((coded / 10.0) - depression, TempElements.DewPoint(group)!.Value, tolerance: 1e-9);
        });

    [Fact]
    public void Every_wind_is_read_back() =>
        Gen.Select(Gen.Int[0, 71], Gen.Int[0, 299]).Sample((fives, speed) =>
        {
            var degrees = 5 * fives;
            var group = new TempGroup($"{degrees / 10:00}{speed + (degrees % 10 == 5 ? 500 : 0):000}", 1);
            Assert.Equal((degrees, speed), TempElements.Wind(group));
        });

    /// <summary>Heights as sent: the thousands, or tens of thousands, dropped; above 500 hPa in tens of metres.</summary>
    [Fact]
    public void Every_usual_height_is_read_back() =>
        Gen.Select(Gen.Int[0, 10], Gen.Double[0.97, 1.03]).Sample((index, share) =>
        {
            var level = StandardLevel.Lower[index];
            var unit = level.Hpa <= 500 ? 10 : 1;
            var height = (int)(level.UsualM * share) / unit * unit;
            var hhh = height / unit % 1000;
            Assert.Equal(height, level.HeightM(hhh));
            Assert.True(level.IsPlausible(hhh));
        });

    /// <summary>A whole part A is written from random levels and read back.</summary>
    [Fact]
    public void A_whole_part_A_is_read_back() =>
        Gen.Select(Gen.Int[-20, 20].Array[11], Gen.Int[0, 50].Array[11], Gen.Int[0, 71].Array[11], Gen.Int[0, 150].Array[11]).Sample((t, d, dir, ff) =>
        {
            var groups = StandardLevel.Lower.Select((level, i) =>
                $"{level.Figures}{level.UsualM / (level.Hpa <= 500 ? 10 : 1) % 1000:000} {Temperature(t[i])}{d[i]:00} {5 * dir[i] / 10:00}{ff[i] + (dir[i] % 2 * 500):000}");
            var sounding = Text.Read($"TTAA 72121 72235 99020 20040 18006 {string.Join(' ', groups)} 88999 77999=");
            Assert.Equal(12, sounding.Levels.Length);
            for (var i = 0; i < 11; i++)
            {
                var level = sounding.Levels[i + 1];
                Assert.Equal(t[i], level.Temperature!.Value.Celsius, tolerance: 0.1001);
                Assert.Equal((5.0 * dir[i], ff[i]), (level.Wind!.Value.FromDegrees, Math.Round(level.Wind!.Value.Speed.Knots, 6)));
            }
        }, iter: 300);

    private static string Temperature(int celsius) => celsius >= 0 ? $"{10 * celsius:000}" : $"{(10 * -celsius) + 1:000}";
}
