using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Notes money that came, for what is owed or ahead of it. What is paid by card runs through the bank's terminal; only its slip's number is noted.</summary>
public sealed class TakePayment(MoneyDoor door, LedgerBook book)
{
    /// <summary>The entry, or why not; the same form again gives the same entry.</summary>
    public async Task<Outcome<EntryId>> From(PaymentForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTakePayments) return NotAllowed.To("take payments");
        var amount = MoneyEntry.Positive(form.Amount, await book.Currency(stop), nameof(form.Amount));
        List<Refusal> wrong = [.. amount.Refusals, .. MoneyEntry.CheckWords(form.Reference, 80, nameof(form.Reference)), .. MoneyEntry.CheckWords(form.Text, 120, nameof(form.Text))];
        if (wrong.Count > 0) return Outcome<EntryId>.Refused(wrong);
        return await door.Write(new MoneyDeed(form.Id, form.PayerId, actor, "payment-taken"), facts => Task.FromResult<Outcome<LedgerEntry>>(
            book.Add(EntryKind.Payment, facts with { Method = form.Method, Reference = form.Reference, Text = form.Text }, Movements.Payment(amount.Value, form.Method))), stop);
    }
}
