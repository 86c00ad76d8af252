using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Reading.Own;

namespace CoachOffice.Drafting.Tests.Reading.Own;

/// <summary>An entry typed alone: as a file, by its name, and with its faults in its own lines.</summary>
public sealed class OwnFileTests
{
    [Theory]
    [InlineData(EntryKind.Drill, "id: one\nname: One\n", "drills:\n  - id: one\n    name: One\n")]
    [InlineData(EntryKind.Drill, "id: one\r\nname: One", "drills:\n  - id: one\n    name: One\n")]
    [InlineData(EntryKind.TrainAfter, "work: a", "train-after:\n  - work: a\n")]
    [InlineData(EntryKind.Dosage, "most-drills: 3\nfewest-reps: 15\n", "dosage:\n    most-drills: 3\n    fewest-reps: 15\n")]
    [InlineData(EntryKind.Name, "name: Ours\n", "name: Ours\n")]
    public void It_becomes_a_file_of_its_kind(EntryKind kind, string typed, string file) => Assert.Equal(file, OwnFile.Of(kind, typed));

    [Theory]
    [InlineData(EntryKind.Name, "anything", "name")]
    [InlineData(EntryKind.Dosage, "anything", "dosage")]
    [InlineData(EntryKind.Drill, "id: half-lean", "drill half-lean")]
    [InlineData(EntryKind.Range, "measure: head-shift", "range head-shift")]
    [InlineData(EntryKind.Goal, "goal: distance", "goal distance")]
    [InlineData(EntryKind.Case, "pattern: p\nname: the first", "case p: the first")]
    [InlineData(EntryKind.Case, "pattern: p", null)]
    [InlineData(EntryKind.TrainAfter, "work: a\nafter: [b, c]", "train-after a after b")]
    [InlineData(EntryKind.TrainAfter, "work: a\nafter: []", null)]
    [InlineData(EntryKind.TrainAfter, "work: a", null)]
    [InlineData(EntryKind.Adjustment, "measure: a\nfrom-age: 60", "adjustment a from 60")]
    [InlineData(EntryKind.Adjustment, "measure: a\nlevels: [beginner, improver]", "adjustment a for beginner improver")]
    [InlineData(EntryKind.Adjustment, "measure: a\nfrom-age: 60\nlevels: [beginner]", "adjustment a from 60 for beginner")]
    [InlineData(EntryKind.Adjustment, "measure: a", null)]
    [InlineData(EntryKind.Adjustment, "from-age: 60", null)]
    [InlineData(EntryKind.Drill, "id: ' '", null)]
    [InlineData(EntryKind.Drill, "id: null", null)]
    [InlineData(EntryKind.Drill, "id: [a]", null)]
    [InlineData(EntryKind.Drill, "half-lean", null)]
    [InlineData(EntryKind.Drill, "id: [", null)]
    [InlineData(EntryKind.Drill, "id: a\n- id: b", null)]
    public void It_says_which_entry_it_is_or_that_it_does_not_say(EntryKind kind, string typed, string? id) => Assert.Equal(id, OwnFile.IdIn(kind, typed)?.ToString());

    [Theory]
    [InlineData(EntryKind.Drill, 4, 9, "drills[0].kit[1]", 3, 5, "kit[1]")]
    [InlineData(EntryKind.Drill, 2, 5, "drills[0]", 1, 1, "file")]
    [InlineData(EntryKind.Drill, 1, 1, "file", 1, 1, "file")]
    [InlineData(EntryKind.Drill, 2, 5, "drills[01]", 1, 1, "drills[01]")]
    [InlineData(EntryKind.Dosage, 3, 8, "dosage.most-drills", 2, 4, "most-drills")]
    [InlineData(EntryKind.Dosage, 3, 8, "dosage", 2, 4, "file")]
    [InlineData(EntryKind.Name, 3, 8, "name", 3, 8, "name")]
    public void A_fault_of_the_file_is_told_in_the_typed_text_s_own_lines(EntryKind kind, int line, int column, string path, int typedLine, int typedColumn, string typedPath) =>
        Assert.Equal(new Fault("f", typedLine, typedColumn, typedPath, "m"), OwnFile.InTyped(new Fault("f", line, column, path, "m"), kind));

    [Fact]
    public void A_fault_read_from_the_file_stands_where_it_was_typed()
    {
        const string Typed = "id: mine\nwhen: drill\ntext: Mind the dog\ncolour: red\n";
        var faults = RulebookReader.Load(RulebookText.Of(SmallBook.Files).With([KeyValuePair.Create("own/x.yaml", OwnFile.Of(EntryKind.Caution, Typed))])).Faults;
        Assert.Equal((4, 1, "colour"), Assert.Single(faults.Select(f => OwnFile.InTyped(f, EntryKind.Caution))) is var f ? (f.Line, f.Column, f.Path) : default);
    }
}
