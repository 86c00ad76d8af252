using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Notes money that went back to a payer: what stands on account, never more. A wrong charge is reversed first, unused lessons are given back first.</summary>
public sealed class RefundMoney(MoneyDoor door, LedgerBook book)
{
    /// <summary>The entry, or why not; the same form again gives the same entry.</summary>
    public async Task<Outcome<EntryId>> From(PaymentForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepBooks) return NotAllowed.To("give money back");
        var amount = MoneyEntry.Positive(form.Amount, await book.Currency(stop), nameof(form.Amount));
        List<Refusal> wrong = [.. amount.Refusals, .. MoneyEntry.CheckWords(form.Reference, 80, nameof(form.Reference)), .. MoneyEntry.CheckWords(form.Text, 120, nameof(form.Text))];
        if (wrong.Count > 0) return Outcome<EntryId>.Refused(wrong);
        return await door.Write(new MoneyDeed(form.Id, form.PayerId, actor, "money-refunded"), facts => Refund(form, amount.Value, facts, stop), stop);
    }

    private async Task<Outcome<LedgerEntry>> Refund(PaymentForm form, Money amount, EntryFacts facts, CancellationToken stop)
    {
        var onAccount = -await book.Balance(form.PayerId, stop);
        if (onAccount.MinorUnits <= 0) return new Refusal("refund-nothing", "Nothing stands on account here. Reverse the charge, or give unused lessons back, then refund what stands on account.", nameof(form.Amount));
        if (amount > onAccount) return new Refusal("refund-more", $"Only {onAccount} stands on account; refund that or less.", nameof(form.Amount));
        return book.Add(EntryKind.Refund, facts with { Method = form.Method, Reference = form.Reference, Text = form.Text }, Movements.Refund(amount, form.Method));
    }
}
