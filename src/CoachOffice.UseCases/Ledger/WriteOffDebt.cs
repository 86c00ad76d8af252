using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Gives up what is owed, or a part of it.</summary>
public sealed class WriteOffDebt(MoneyDoor door, LedgerBook book)
{
    /// <summary>The entry, or why not; the same form again gives the same entry.</summary>
    public async Task<Outcome<EntryId>> From(WriteOffForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepBooks) return NotAllowed.To("write off what is owed");
        var amount = MoneyEntry.Positive(form.Amount, await book.Currency(stop), nameof(form.Amount));
        List<Refusal> wrong = [.. amount.Refusals, .. MoneyEntry.CheckWords(form.Reason, 120, nameof(form.Reason))];
        if (!OneLine.Shows(form.Reason)) wrong.Add(new("write-off-reason", "Say why in a few words; no names, the books outlive the person.", nameof(form.Reason)));
        if (wrong.Count > 0) return Outcome<EntryId>.Refused(wrong);
        return await door.Write(new MoneyDeed(form.Id, form.PayerId, actor, "debt-written-off"), facts => GiveUp(form, amount.Value, facts, stop), stop);
    }

    private async Task<Outcome<LedgerEntry>> GiveUp(WriteOffForm form, Money amount, EntryFacts facts, CancellationToken stop)
    {
        var owed = await book.Balance(form.PayerId, stop);
        if (owed.MinorUnits <= 0) return new Refusal("write-off-nothing", "Nothing is owed here.", nameof(form.Amount));
        if (amount > owed) return new Refusal("write-off-more", $"Only {owed} is owed; write off that or less.", nameof(form.Amount));
        return book.Add(EntryKind.WriteOff, facts with { Text = form.Reason }, Movements.WriteOff(amount));
    }
}
