using System.Globalization;
using CoachOffice.Benchmarks.Drafting;
using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using CoachOffice.UseCases.Rulebook;
using CoachOffice.UseCases.Students;
using NodaTime;

namespace CoachOffice.Benchmarks.Office;

/// <summary>Opens a practice and serves students by the same operations as the pages do.</summary>
internal sealed class FirstPeople(OpenOffice office)
{
    public const string Email = "owner@example.org";
    public const string Password = "nine patient otters swim";

    private const string Name = "Petra Holm";

    public Actor Owner { get; private set; } = Actor.Clock;

    public async Task Open()
    {
        if (await office.Do((PrepareDatabase prepare) => prepare.Now(CancellationToken.None)) is { } refusal) throw new InvalidOperationException(refusal.Sentence);
        await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp());
        var owner = await office.Must((OpenPractice open) => open.For(new FirstRunForm
        {
            OwnerName = Name,
            OwnerEmail = Email,
            Password = Password,
            Practice = new PracticeDetails { Name = "Long Meadow Lessons", Zone = "Europe/Berlin", Currency = "EUR" },
        }));
        Owner = new Actor(owner, Name, Policy.Owner);
    }

    /// <summary>A student with a lesson of today and a draft from it, approved or not.</summary>
    public async Task<Served> Serve(string name, bool approve)
    {
        var student = await office.Must((RegisterStudent register) => register.From(new StudentDetails { GivenName = name, FamilyName = "Quill", Email = $"{name}@example.org", BirthDate = new LocalDate(1984, 4, 2), Kit = Enum.GetValues<Kit>() }, Owner));
        var book = await office.Do((Rulebooks books) => books.InForce());
        var today = await office.Do((PracticeClock clock) => clock.Today());
        foreach (var facts in new SomeLessons(book.Book, new Random(11)).Take(200).Where(f => f.Readings.Count > 20))
        {
            var heading = new LessonHeading(today, facts.Club);
            var lesson = await office.Must((StartLesson start) => start.For(student, heading, Owner));
            if (!(await office.Do((SaveLesson save) => save.As(lesson, 1, Form(heading, facts), Owner))).Succeeded) continue;
            var plan = await office.Must((DraftPlan draft) => draft.For(lesson, Owner));
            if (!approve || (await office.Do((ApprovePlan approving) => approving.Now(plan, 1, Owner))).Succeeded) return new Served(student, lesson, plan);
        }

        throw new InvalidOperationException("None of the lessons led to a plan.");
    }

    private static LessonForm Form(LessonHeading heading, LessonFacts facts) => new()
    {
        Heading = heading,
        Entries = [.. facts.Readings.Select(r => new MeasureEntry { Measure = r.Measure.Value, Text = string.Join(' ', Enumerable.Repeat(r.Value.Value.ToString(CultureInfo.InvariantCulture), 4)) })],
        Observations = "Finish held, tempo even.",
    };
}
