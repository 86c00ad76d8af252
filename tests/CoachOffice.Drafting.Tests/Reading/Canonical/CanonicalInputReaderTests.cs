using System.Text;
using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Drafting.Reading.Canonical;
using CoachOffice.Drafting.Tests.Properties;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Reading.Canonical;

public sealed class CanonicalInputReaderTests
{
    [Fact]
    public void A_written_input_reads_back_to_the_same_bytes_and_the_same_draft() => RandomLessons.One.Sample(facts =>
    {
        var written = CanonicalInput.Write(facts);
        var read = CanonicalInputReader.Read(Encoding.UTF8.GetString(written));
        Assert.Equal(written, CanonicalInput.Write(read));
        Assert.Equal(Drafter.Draft(HouseBook.Compiled, facts).Findings, Drafter.Draft(HouseBook.Compiled, read).Findings);
    }, iter: Drafted.Lessons / 4);

    [Fact]
    public void It_is_written_as_canonical_json_is() => RandomLessons.One.Sample(facts =>
    {
        var written = CanonicalInput.Write(facts);
        Assert.Equal(CanonicalJson.Write(JsonNode.Parse(written)), written);
    }, iter: 500);

    [Fact]
    public void An_input_without_a_unit_known_here_is_refused_with_an_exception() =>
        Assert.Throws<FormatException>(() => CanonicalInputReader.Read(
            """{"asOf":"2026-05-04","club":"iron","readings":[{"instrument":"video","measure":"x","readings":1,"unit":"furlong","value":1}],"student":{"birthYear":1980,"daysPerWeek":3,"goals":[],"hand":"right","kit":[],"level":"elite","limits":[],"minutesPerWeek":90,"room":"range"},"tried":[]}"""));
}
