using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.Web.Features.Students;

/// <summary>Turns typed text into details, or says everything that could not be read. What may be entered is checked by the domain afterwards.</summary>
internal sealed class StudentFormReader
{
    private readonly List<Refusal> _refusals = [];

    public static Outcome<StudentDetails> Read(StudentForm form)
    {
        var reader = new StudentFormReader();
        var details = reader.Details(form);
        return reader._refusals.Count == 0 ? details : Outcome<StudentDetails>.Refused(reader._refusals);
    }

    private StudentDetails Details(StudentForm form) => new()
    {
        GivenName = Text(form.GivenName),
        FamilyName = Text(form.FamilyName),
        Email = Text(form.Email),
        Phone = Text(form.Phone),
        BirthDate = Day(form.BirthDate, nameof(form.BirthDate), "birth date"),
        Guardian = GuardianOf(form.Guardian),
        Hand = Word<Hand>(form.Hand, nameof(form.Hand)),
        Level = Word<Level>(form.Level, nameof(form.Level)),
        Room = Word<Room>(form.Room, nameof(form.Room)),
        Goals = Words<Goal>(form.Goals, nameof(form.Goals)),
        Kit = Words<Kit>(form.Kit, nameof(form.Kit)),
        MinutesPerWeek = Whole(form.MinutesPerWeek, nameof(form.MinutesPerWeek), "minutes a week"),
        DaysPerWeek = Whole(form.DaysPerWeek, nameof(form.DaysPerWeek), "days a week"),
        Limits = [.. form.Limits.Where(IsTyped).Select(LimitOf)],
        ClubSpeedGoal = Amount(form.ClubSpeedGoal, form.Imperial ? Unit.MilePerHour : Unit.MetrePerSecond, nameof(form.ClubSpeedGoal)),
        Height = Amount(form.Height, form.Imperial ? Unit.Inch : Unit.Centimetre, nameof(form.Height)),
        Notes = Text(form.Notes),
    };

    private static string Text(string? typed) => typed?.Trim() ?? "";

    private static Guardian? GuardianOf(GuardianFields fields) =>
        Text(fields.Name).Length + Text(fields.Email).Length + Text(fields.Phone).Length + Text(fields.Relation).Length == 0
            ? null
            : new Guardian { Name = Text(fields.Name), Email = Text(fields.Email), Phone = Text(fields.Phone), Relation = Text(fields.Relation) };

    // A date or a source without a region is an entry half made, not an empty row.
    private static bool IsTyped(LimitFields limit) => Text(limit.Region).Length + Text(limit.NotedOn).Length + Text(limit.Source).Length > 0;

    private StudentLimit LimitOf(LimitFields fields) => new()
    {
        Region = RegionOf(fields),
        Status = Word<LimitStatus>(fields.Status, nameof(StudentForm.Limits)),
        NotedOn = Day(fields.NotedOn, nameof(StudentForm.Limits), "date of a limit") ?? Missing(fields),
        Source = Text(fields.Source),
    };

    private Region RegionOf(LimitFields fields)
    {
        if (!string.IsNullOrWhiteSpace(fields.Region)) return Word<Region>(fields.Region, nameof(StudentForm.Limits));
        _refusals.Add(new("limit-region", "Say which part of the body the limit is about, or clear its row.", nameof(StudentForm.Limits)));
        return default;
    }

    private LocalDate Missing(LimitFields fields)
    {
        if (string.IsNullOrWhiteSpace(fields.NotedOn)) _refusals.Add(new("limit-date", "Say on which day the limit was noted.", nameof(StudentForm.Limits)));
        return default;
    }

    private LocalDate? Day(string? typed, string field, string what)
    {
        if (string.IsNullOrWhiteSpace(typed)) return null;
        var parsed = LocalDatePattern.Iso.Parse(typed.Trim());
        if (parsed.Success) return parsed.Value;
        _refusals.Add(new("date-unreadable", $"'{Short(typed)}' is no day of the calendar, so the {what} could not be read; write it as year-month-day, such as 2001-04-30.", field));
        return null;
    }

    private int Whole(string? typed, string field, string what)
    {
        var text = Text(typed);
        if (text.Length is > 0 and < 6 && int.TryParse(text, out var number)) return number;
        _refusals.Add(new("number-unreadable", $"'{Short(text)}' is no whole number of {what}.", field));
        return 0;
    }

    private Quantity? Amount(string? typed, Unit unit, string field)
    {
        if (string.IsNullOrWhiteSpace(typed)) return null;
        var number = NumberEntry.One(typed);
        if (number.TryGet(out var value)) return new Quantity(value, unit);
        _refusals.AddRange(number.Refusals.Select(r => r with { Field = field }));
        return null;
    }

    private T Word<T>(string? word, string field)
        where T : struct, Enum
    {
        if (Terms.TryParse<T>(word, out var member)) return member;
        _refusals.Add(new("word-unknown", $"'{Short(word ?? "")}' is none of: {string.Join(", ", Terms.All<T>())}.", field));
        return default;
    }

    private List<T> Words<T>(IEnumerable<string?> words, string field)
        where T : struct, Enum => [.. words.Where(w => !string.IsNullOrWhiteSpace(w)).Select(w => Word<T>(w, field))];

    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "...";
}
