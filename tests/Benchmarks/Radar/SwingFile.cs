using System.Globalization;
using System.Text;
using NodaTime;

namespace CoachOffice.Benchmarks.Radar;

/// <summary>A made-up file: so many swings, ten a day and club, eight measures each, numbers from a fixed seed.</summary>
internal static class SwingFile
{
    public const int Rows = 50_000;

    private static readonly string[] Clubs = ["Driver", "3 wood", "Hybrid", "7 iron", "Sand wedge"];

    public static byte[] Make(int rows, int seed)
    {
        var random = new Random(seed);
        var text = new StringBuilder("Date,Club,Club speed [mph],Ball speed [mph],Attack angle [deg],Club path [deg],Face to path [deg],Start direction [deg],Launch angle [deg],Carry [yd]\n");
        for (var i = 0; i < rows; i++)
        {
            var day = new LocalDate(2020, 1, 1).PlusDays(i / (10 * Clubs.Length));
            var (path, turn) = (random.NextDouble() * 8 - 4, random.NextDouble() * 6 - 3);
            text.Append(CultureInfo.InvariantCulture, $"{day:uuuu-MM-dd},{Clubs[i / 10 % Clubs.Length]},{80 + random.NextDouble() * 20:0.0},{110 + random.NextDouble() * 8:0.0},{random.NextDouble() * 8 - 4:0.0},{path:0.0},{turn:0.0},{path + 0.7 * turn:0.0},{10 + random.NextDouble() * 10:0.0},{150 + random.NextDouble() * 80:0.0}\n");
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
