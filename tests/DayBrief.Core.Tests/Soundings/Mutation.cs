namespace DayBrief.Soundings;

/// <summary>Damages bytes as transmission, editors and people do: changed, lost, doubled, moved and cut.</summary>
internal static class Mutation
{
    public static byte[] Of(byte[] original, Random random)
    {
        var bytes = original.ToList();
        for (var times = 1 + random.Next(4); times > 0 && bytes.Count > 0; times--)
        {
            var at = random.Next(bytes.Count);
            switch (random.Next(7))
            {
                case 0:
                    bytes[at] = (byte)random.Next(256);
                    break;
                case 1:
                    bytes[at] = (byte)"0123456789/-.,;=\n #{}[]\""[random.Next(24)];
                    break;
                case 2:
                    bytes.RemoveRange(at, Math.Min(1 + random.Next(12), bytes.Count - at));
                    break;
                case 3:
                    bytes.InsertRange(at, bytes.GetRange(at, Math.Min(1 + random.Next(40), bytes.Count - at)));
                    break;
                case 4:
                    bytes.Insert(at, (byte)random.Next(32, 127));
                    break;
                case 5:
                    bytes[at] ^= (byte)(1 << random.Next(8));
                    break;
                default:
                    bytes.RemoveRange(at, random.Next(3) == 0 ? bytes.Count - at : 0);
                    break;
            }
        }

        return [.. bytes];
    }
}
