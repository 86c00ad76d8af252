using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Ledger.Reports;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps.ByTime;

/// <summary>Takes letters about payments off the list once they are paid, so that no coach is asked about them.</summary>
public sealed class EndPaid(OfficeDb db, ReadOverdue overdue, OfficeMessages office)
{
    /// <summary>How many are not wanted any more.</summary>
    public async Task<int> Once(CancellationToken stop = default)
    {
        var open = await db.Messages.Where(m => m.Kind == MessageKind.PaymentDue && (m.State == MessageState.Waiting || m.State == MessageState.AwaitsApproval))
            .Select(m => new { m.SubjectId, m.OnceKey }).ToListAsync(stop);
        var ended = 0;
        foreach (var letter in open)
        {
            var owed = await overdue.Of(PayerId.From(letter.SubjectId!.Value), stop);
            if (owed is not null && letter.OnceKey.EndsWith($"|{PaymentLetter.Occasion(owed)}", StringComparison.Ordinal)) continue;
            ended += await office.EndAbout((letter.SubjectId!.Value, null), [MessageKind.PaymentDue], "paid", stop);
        }

        return ended;
    }
}
