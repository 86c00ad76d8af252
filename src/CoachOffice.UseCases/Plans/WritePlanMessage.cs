using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Plans;

/// <summary>Writes the coach's words on top of a plan.</summary>
public sealed class WritePlanMessage(PlanEdits edits)
{
    private const int Longest = 4000;

    /// <summary>The plan's id, or why not.</summary>
    public Task<Outcome<PlanId>> On(PlanId plan, int version, string message, Actor actor, CancellationToken stop = default)
    {
        var edit = new EditOf { Plan = plan, Version = version, Reason = EditReason.Wording };
        return edits.Whole(edit, actor, p => Task.FromResult(Write(p, edit, message ?? "", actor)), stop);
    }

    private IReadOnlyList<Refusal> Write(Plan plan, EditOf edit, string message, Actor actor)
    {
        if (message.Length > Longest) return [new("message-too-long", "The words on top hold up to 4000 characters.", "Message")];
        var before = plan.Message;
        plan.Write(message);
        edits.Keep(edit, actor, "message", before, plan.Message);
        return [];
    }
}
