using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Measuring.Answers;

/// <summary>After a prompt went out: one more some days later unless a reading came, then silence; from there it is the coach's to ask. A minor's guardian is asked once.</summary>
public sealed class PromptAgain(PlanMessages messages)
{
    /// <summary>The second prompt's place in the once-key: there is never a third.</summary>
    private const string Second = "second-prompt";

    private const int AfterDays = 5;

    /// <summary>Writes the second prompt; after the second it is there already.</summary>
    public Task After(SendingFacts facts, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (facts.IsMinor || facts.Look is not { } look) return Task.CompletedTask;
        return messages.Write(
            new DueMessage
            {
                Kind = MessageKind.RetestPrompt,
                StudentId = facts.Student.Id,
                PlanId = facts.Plan.Id,
                SubjectId = look.Id,
                DueAt = facts.Dates.Morning(facts.Today.PlusDays(AfterDays)),
                Reason = $"asked {AfterDays} days before, no reading yet",
                Occasion = Second,
            },
            stop);
    }
}
