using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.People;
using CoachOffice.SeedDemo.Swings;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>One invented person on their way through the year.</summary>
internal sealed class StudentLife(Persona persona, int seat, Scene scene)
{
    public Persona Persona { get; } = persona;

    /// <summary>Place in the list, from 0.</summary>
    public int Seat { get; } = seat;

    public Chance Chance { get; } = new(7919 * (seat + 1));

    public Swing Swing { get; } = new(scene.Book, persona.Body, persona.Habits, new Chance(104_729 + seat));

    public Actor Coach { get; } = persona.Coach == 1 ? scene.Cast.First : scene.Cast.Second;

    public StudentId Id { get; set; }

    /// <summary>True from the day they joined.</summary>
    public bool IsRegistered { get; set; }

    /// <summary>The plan in their hands, or null.</summary>
    public PlanId? Plan { get; set; }

    /// <summary>The day that plan went out.</summary>
    public LocalDate PlanFrom { get; set; }

    /// <summary>What their private link allows, once the plan was delivered.</summary>
    public LinkPass? Pass { get; set; }

    /// <summary>When they practise next.</summary>
    public LocalDate NextPractice { get; set; }

    /// <summary>A draft waiting for the evening.</summary>
    public PlanId? ToApprove { get; set; }

    /// <summary>True on days of lessons.</summary>
    public bool IsTaughtOn(LocalDate day) => Persona.Lessons.Contains(scene.Calendar.Before(day));
}
