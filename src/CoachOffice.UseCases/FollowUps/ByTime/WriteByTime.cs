using CoachOffice.Data;

namespace CoachOffice.UseCases.FollowUps.ByTime;

/// <summary>
/// Writes the messages that come from time. It may run any number of times and on any number of machines: each message has a key of its own, and who comes
/// second finds it there.
/// </summary>
public sealed class WriteByTime(OfficeDb db, OfficeMessages office, ReadMessageRules rules, EndPaid paid, IEnumerable<ITimedMessages> all)
{
    /// <summary>How many are new.</summary>
    public async Task<int> Once(CancellationToken stop = default)
    {
        var written = 0;
        await rules.Again(stop);
        await paid.Once(stop);
        foreach (var timed in all)
        {
            db.ChangeTracker.Clear();
            var due = await timed.Due(stop);
            db.ChangeTracker.Clear();
            var fresh = await office.WriteAll(due, stop);

            // Somebody else wrote one of them at the very moment: the next round finds the rest.
            if (fresh > 0 && await db.TrySave(stop) == Saved.Yes) written += fresh;
        }

        db.ChangeTracker.Clear();
        return written;
    }
}
