using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Students.Merging;

/// <summary>Makes two records of one person one: everything that names the one that goes names the one that stays, in one transaction. It cannot be undone.</summary>
public sealed class MergeStudents(OfficeDb db, PracticeClock clock, MergeObstacles obstacles, MergeMoves moves, AuditTrail trail)
{
    internal static Refusal Same { get; } = new("same-record", "This is one record. Pick another one of the same person.");

    /// <summary>The student who stays, or why not.</summary>
    public async Task<Outcome<StudentId>> As(MergeOrder order, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } by) return NotAllowed.To("merge records of students");
        if (order.Stays == order.Goes) return Same;
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var both = await db.Students.Where(s => (s.Id == order.Stays || s.Id == order.Goes) && s.ErasedAt == null).ToDictionaryAsync(s => s.Id, stop);
        if (both.Count < 2) return StudentRefusals.NotFound;
        var (stays, goes) = (both[order.Stays], both[order.Goes]);
        if (stays.Version != order.StaysVersion || goes.Version != order.GoesVersion) return StudentRefusals.Busy;
        if (await Wrong(stays, goes, order, stop) is { Count: > 0 } wrong) return Outcome<StudentId>.Refused(wrong);
        stays.TakeIn(goes, MergeFields.Chosen(stays, goes, order.Taken), MergeFields.PayerOf(stays, goes, order.Taken), clock.Now);
        trail.Add(actor, "students-merged", AuditSubject.Of(stays.Id), $"taken-in:{goes.Id.Value}");
        trail.Add(actor, "student-merged-away", AuditSubject.Of(goes.Id), $"into:{stays.Id.Value}");
        if (await db.TrySave(stop) != Saved.Yes) return StudentRefusals.Busy;
        await moves.Move(stays.Id, goes.Id, by, stop);
        await transaction.CommitAsync(stop);
        return stays.Id;
    }

    private async Task<IReadOnlyList<Refusal>> Wrong(Student stays, Student goes, MergeOrder order, CancellationToken stop) =>
        [.. await obstacles.Between(stays.Id, goes.Id, stop), .. StudentCheck.Of(MergeFields.Chosen(stays, goes, order.Taken), await clock.Today(stop))];
}
