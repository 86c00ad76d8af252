using System.Text;
using CoachOffice.Cli;
using CoachOffice.Drafting.Tests.Reading;
using CoachOffice.Drafting.Tests.Reading.Lessons;

namespace CoachOffice.Drafting.Tests.Cli;

public sealed class CommandLineTests : IDisposable
{
    private readonly DirectoryInfo _directory = Directory.CreateTempSubdirectory("command-line");
    private readonly MemoryStream _output = new();
    private readonly StringWriter _errors = new();

    public CommandLineTests() => Rules(SmallBook.Files);

    private string Output => Encoding.UTF8.GetString(_output.ToArray());

    private string Errors => _errors.ToString();

    public void Dispose() => _directory.Delete(recursive: true);

    [Fact]
    public void A_sound_rulebook_is_counted_and_named_by_its_hash()
    {
        Assert.Equal(0, Run("check-rulebook", "--rules", At("rules")));

        Assert.Matches("^6 measures, 2 patterns, 3 drills, 1 progressions, sha256 [0-9a-f]{64}\n$", Output);
    }

    [Fact]
    public void The_rules_that_came_with_the_program_are_taken_when_none_are_named() => Assert.Equal(0, Run("check-rulebook"));

    [Fact]
    public void A_catalogue_is_written_beside_the_rules_and_then_found_unchanged()
    {
        Assert.Equal(2, Run("catalogue", "--rules", At("rules"), "--check"));
        Assert.Equal(0, Run("catalogue", "--rules", At("rules")));
        Assert.Equal(0, Run("catalogue", "--rules", At("rules"), "--check"));
        Rules(SmallBook.With("drills.yaml", "cue: brush the grass", "cue: brush the turf").Files);
        Assert.Equal(2, Run("catalogue", "--rules", At("rules"), "--check"));
    }

    [Fact]
    public void The_coverage_of_a_thin_rulebook_is_printed_and_refused()
    {
        Assert.Equal(2, Run("check-rulebook", "--rules", At("rules"), "--coverage"));

        Assert.Contains("holes without a reason or something to do instead", Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_faulty_rulebook_is_refused_with_every_fault_and_nothing_on_the_output()
    {
        Rules(SmallBook.With("patterns.yaml", "precedence: 17", "precedence: soon").Files);
        Rules(SmallBook.With("ranges.yaml", "iron: [9, 19]", "iron: [19, 9]").Files.Where(f => f.Key == "ranges.yaml"));

        Assert.Equal(2, Run("check-rulebook", "--rules", At("rules")));

        Assert.Equal("", Output);
        Assert.Equal(
            $"{At("rules")}/patterns.yaml:4:17: patterns[0].precedence: a number is expected, not the text 'soon'\n"
            + $"{At("rules")}/ranges.yaml:4:11: ranges[0].iron: the low end 19 is above the high end 9; swap them\n",
            Errors);
    }

    [Fact]
    public void A_case_that_comes_out_otherwise_is_a_fault_at_its_place()
    {
        Rules(SmallBook.With("cases.yaml", "value: 9", "value: 1").Files);

        Assert.Equal(2, Run("check-rulebook", "--rules", At("rules")));

        Assert.Equal("", Output);
        Assert.StartsWith($"{At("rules")}/cases.yaml:2:5: cases[0]: head-dives does not fire here and should: it is out (", Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sound_lesson_is_drafted_as_JSON_bytes_and_as_text()
    {
        Assert.Equal(0, Run("draft", Lesson(SmallLesson.Json), "--rules", At("rules")));

        Assert.Equal((byte)'{', _output.ToArray()[0]);
        Assert.EndsWith("}\n", Output, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', Output);
        _output.SetLength(0);
        Assert.Equal(0, Run("draft", Lesson(SmallLesson.Json), "--text", "--rules", At("rules")));
        Assert.NotEmpty(Output);
    }

    [Fact]
    public void A_directory_that_is_not_there_is_refused()
    {
        Assert.Equal(2, Run("check-rulebook", "--rules", At("nowhere")));

        Assert.Equal($"{At("nowhere")}:1:1: file: there is no such directory of rules\n", Errors);
    }

    [Fact]
    public void A_refused_lesson_leaves_the_output_empty()
    {
        var lesson = Lesson(SmallLesson.Json.Replace("\"driver\"", "\"spoon\"", StringComparison.Ordinal).Replace("half-lean", "half-leen", StringComparison.Ordinal));

        Assert.Equal(2, Run("draft", lesson, "--rules", At("rules")));

        Assert.Equal("", Output);
        Assert.Contains($"{lesson}:8:25: tried[0].drill: warning: the rulebook has no drill 'half-leen'", Errors, StringComparison.Ordinal);
        Assert.Contains($"{lesson}:5:11: club: 'spoon' is not one of the words here", Errors, StringComparison.Ordinal);
        Assert.Equal(2, Errors.Count(c => c == '\n'));
    }

    [Fact]
    public void A_lesson_that_is_not_there_is_refused()
    {
        Assert.Equal(2, Run("draft", At("none.json"), "--rules", At("rules")));

        Assert.Equal($"{At("none.json")}:1:1: file: there is no such file\n", Errors);
    }

    [Theory]
    [InlineData]
    [InlineData("draft")]
    [InlineData("draft", "a.json", "b.json")]
    [InlineData("draft", "a.json", "--txt")]
    [InlineData("check-rulebook", "--rules")]
    [InlineData("check-rulebook", "--rules", "a", "--rules", "b")]
    [InlineData("chek-rulebook")]
    public void A_command_that_is_not_understood_is_a_usage_error(params string[] args)
    {
        Assert.Equal(64, Run(args));

        Assert.Equal("", Output);
        Assert.Contains("Usage: check-rulebook", Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_is_no_error()
    {
        Assert.Equal(0, Run("--help"));

        Assert.Contains("check-rulebook", Output, StringComparison.Ordinal);
        Assert.Equal("", Errors);
    }

    [Fact]
    public void A_defect_is_one_line_and_its_own_exit_code()
    {
        Assert.Equal(1, CommandLine.Run(["check-rulebook", "--rules", At("rules")], new ClosedStream(), _errors));

        Assert.StartsWith("This is a defect of the program", Errors, StringComparison.Ordinal);
        Assert.Equal(1, Errors.Count(c => c == '\n'));
    }

    private int Run(params string[] args) => CommandLine.Run(args, _output, _errors);

    private string At(string name) => $"{_directory.FullName}/{name}";

    private string Lesson(string json)
    {
        File.WriteAllText(At("lesson.json"), json);
        return At("lesson.json");
    }

    private void Rules(IEnumerable<KeyValuePair<string, string>> files)
    {
        Directory.CreateDirectory(At("rules"));
        foreach (var (name, content) in files) File.WriteAllText($"{At("rules")}/{name}", content);
    }

    /// <summary>An output nobody can write to, as when a pipe is gone.</summary>
    private sealed class ClosedStream : MemoryStream
    {
        public override void Write(ReadOnlySpan<byte> buffer) => throw new NotSupportedException("The output is closed.");
    }
}
