using CoachOffice.Domain;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Lessons.Imports;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>From the form to what a list can be read by; whatever is open is asked for, never guessed.</summary>
internal sealed class StudentColumnsCheck(FileFacts facts)
{
    private readonly List<Refusal> _open = [];

    /// <summary>What was said, or everything that is still open or wrong, each with its field.</summary>
    public Outcome<StudentColumns> Of(StudentColumnsForm form)
    {
        _open.Clear();
        var said = Fields(form);
        var columns = new StudentColumns
        {
            Columns = said,
            NameOrder = NameOrderOf(said, form.NameOrder),
            DayOrder = said.FirstOrDefault(c => c.Field == StudentField.BirthDate) is { } born ? DayOrderOf(born.Column, form.DayOrder) : null,
            WhenThere = Word<WhenThere>(form.WhenThere, "when-there", "Say what happens with a row whose student is there already."),
            SharedMail = Word<SharedMail>(form.SharedMail, "shared-mail", "Say who a row with a known mail address and another name is."),
        };
        return _open.Count == 0 ? columns : Outcome<StudentColumns>.Refused([.. _open]);
    }

    private List<StudentColumn> Fields(StudentColumnsForm form)
    {
        var said = new List<StudentColumn>();
        foreach (var (column, word) in form.Fields.Where(f => f.Value.Length > 0 && f.Key >= 0 && f.Key < facts.Columns.Count).OrderBy(f => f.Key))
        {
            if (!Terms.TryParse<StudentField>(word, out var field)) Ask("field-unknown", $"Pick from the list what '{facts.Layout.Columns[column].Name}' holds.", $"field[{column}]");
            else if (said.Exists(c => c.Field == field)) Ask("field-twice", $"Two columns cannot both be {FieldWords.Of(field).ToLowerInvariant()}; leave one out.", $"field[{column}]");
            else said.Add(new StudentColumn(column, field));
        }

        Names(said);
        Alternatives(said, StudentField.HeightCm, StudentField.HeightInches);
        Alternatives(said, StudentField.SpeedGoalMetresPerSecond, StudentField.SpeedGoalMilesPerHour);
        return said;
    }

    private void Names(List<StudentColumn> said)
    {
        var (given, whole) = (Has(said, StudentField.GivenName), Has(said, StudentField.FullName));
        if (!given && !whole) Ask("name-missing", "Say which column holds the given name, or the whole name.", "field[0]");
        if (whole && (given || Has(said, StudentField.FamilyName))) Ask("name-twice", "A list has either whole names or given and family names apart; leave one of them out.", $"field[{said.First(c => c.Field == StudentField.FullName).Column}]");
    }

    private void Alternatives(List<StudentColumn> said, StudentField one, StudentField other)
    {
        if (Has(said, one) && said.Find(c => c.Field == other) is { } second)
            Ask("field-twice", $"{FieldWords.Of(one)} and {FieldWords.Of(other)} say the same thing; leave one out.", $"field[{second.Column}]");
    }

    private NameOrder? NameOrderOf(List<StudentColumn> said, string word)
    {
        if (!Has(said, StudentField.FullName)) return null;
        if (Terms.TryParse<NameOrder>(word, out var order)) return order;
        Ask("name-order", "Say in which order whole names are written.", "name-order");
        return null;
    }

    private DayOrder? DayOrderOf(int column, string word)
    {
        var days = facts.Columns[column];
        if (days.ShownOrder is { } shown) return shown;
        if (!days.AsksForOrder) return null;
        if (Terms.TryParse<DayOrder>(word, out var order)) return order;
        Ask("day-order", $"Days such as {days.First.FirstOrDefault()} can be read two ways. Say whether the day or the month comes first.", "day-order");
        return null;
    }

    private T Word<T>(string word, string field, string sentence)
        where T : struct, Enum
    {
        if (Terms.TryParse<T>(word, out var member)) return member;
        Ask(field, sentence, field);
        return default;
    }

    private static bool Has(List<StudentColumn> said, StudentField field) => said.Exists(c => c.Field == field);

    private void Ask(string code, string sentence, string field) => _open.Add(new Refusal(code, sentence, field));
}
