using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Measuring;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>What a file must be told beside its measures: which club, which day.</summary>
internal sealed class SurroundingsCheck(FileFacts facts, LocalDate today, List<Refusal> open)
{
    public IReadOnlyList<ClubWord> Clubs(int column, IReadOnlyDictionary<string, string> said)
    {
        var name = facts.Layout.Columns[column].Name;
        if (!facts.Columns[column].HasFewWords)
        {
            Ask("club-column", $"'{name}' holds no word, or more than {ColumnFacts.MostWords} different ones: it cannot name the club.", "club-column");
            return [];
        }

        return [.. facts.Columns[column].Words.Select((word, i) => Word(word, $"club[{column}][{i}]", said)).OfType<ClubWord>()];
    }

    public Club? Club(string said)
    {
        if (Terms.TryParse<Club>(said, out var club)) return club;
        Ask("club-missing", "Say which column names the club, or pick the one club of this file.", "club");
        return null;
    }

    public DayOrder? Order(int column, string said)
    {
        var days = facts.Columns[column];
        if (days.ShownOrder is { } shown) return shown;
        if (!days.AsksForOrder) return null;
        if (Terms.TryParse<DayOrder>(said, out var order)) return order;
        Ask("day-order", $"Days such as {days.First.FirstOrDefault()} can be read two ways. Say whether the day or the month comes first.", "day-order");
        return null;
    }

    public LocalDate? Day(string said)
    {
        var read = LocalDatePattern.Iso.Parse(said.Trim());
        if (!read.Success)
        {
            Ask("day-missing", "Say which column holds the day, or pick the one day of this file.", "day");
            return null;
        }

        if (HeadingCheck.Of(new LessonHeading(read.Value, Domain.Measuring.Club.Driver), today) is not { } wrong) return read.Value;
        Ask(wrong.Code, wrong.Sentence, "day");
        return null;
    }

    private ClubWord? Word(string word, string field, IReadOnlyDictionary<string, string> said)
    {
        var choice = said.GetValueOrDefault(word, "");
        if (choice == ColumnsForm.LeftOut) return new ClubWord(word, null);
        if (Terms.TryParse<Club>(choice, out var club)) return new ClubWord(word, club);
        Ask("club-word", $"Say which club '{word}' is, or leave its swings out.", field);
        return null;
    }

    private void Ask(string code, string sentence, string field) => open.Add(new Refusal(code, sentence, field));
}
