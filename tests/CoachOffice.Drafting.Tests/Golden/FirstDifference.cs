namespace CoachOffice.Drafting.Tests.Golden;

/// <summary>Compares two texts and shows the first line in which they differ, with the lines before it.</summary>
internal static class FirstDifference
{
    private const int LinesBefore = 4;

    public static void MustBeNone(string expected, string actual)
    {
        if (expected == actual) return;
        var (wanted, got) = (expected.Split('\n'), actual.Split('\n'));
        var line = Enumerable.Range(0, Math.Min(wanted.Length, got.Length)).FirstOrDefault(i => wanted[i] != got[i], Math.Min(wanted.Length, got.Length));
        var before = string.Join('\n', wanted[Math.Max(0, line - LinesBefore)..line]);
        Assert.Fail($"Line {line + 1}\n{before}\n- {wanted.ElementAtOrDefault(line)}\n+ {got.ElementAtOrDefault(line)}");
    }
}
