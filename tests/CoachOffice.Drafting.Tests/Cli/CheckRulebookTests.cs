using System.Text;
using CoachOffice.Cli;
using CoachOffice.Drafting.Tests.Reading;

namespace CoachOffice.Drafting.Tests.Cli;

public sealed class CheckRulebookTests : IDisposable
{
    private readonly DirectoryInfo _directory = Directory.CreateTempSubdirectory("check-rulebook");
    private readonly MemoryStream _output = new();
    private readonly StringWriter _errors = new();

    public void Dispose() => _directory.Delete(recursive: true);

    [Fact]
    public void Warnings_stand_on_the_error_stream_beside_a_sound_count()
    {
        Assert.Equal(0, Check(SmallBook.Files));

        Assert.Matches("^6 measures, [^\n]+\n$", Encoding.UTF8.GetString(_output.ToArray()));
        Assert.Contains("patterns.yaml:2: warning: no case: setup-tilt: has no worked case that fires", _errors.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_refusal_leaves_the_output_empty()
    {
        Assert.Equal(2, Check(SmallBook.With("patterns.yaml", "unless: [head-shift in range, pattern head-dives]", "unless: [address-spine-tilt.out]").Files));

        Assert.Empty(_output.ToArray());
        Assert.Contains("patterns.yaml:2: refused: never true: setup-tilt: never fires", _errors.ToString(), StringComparison.Ordinal);
        Assert.Contains("  smallest lesson: {\"asOf\":", _errors.ToString(), StringComparison.Ordinal);
    }

    private int Check(IEnumerable<KeyValuePair<string, string>> files)
    {
        foreach (var (name, content) in files) File.WriteAllText(Path.Combine(_directory.FullName, name), content);
        return CommandLine.Run(["check-rulebook", "--rules", _directory.FullName], _output, _errors);
    }
}
