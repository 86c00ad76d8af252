using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Charges something by hand.</summary>
public sealed class ChargePayer(OfficeDb db, MoneyDoor door, LedgerBook book)
{
    /// <summary>The entry, or why not; the same form again gives the same entry.</summary>
    public async Task<Outcome<EntryId>> From(ChargeForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTakePayments) return NotAllowed.To("charge payers");
        var currency = await book.Currency(stop);
        var read = form.Lines.Select((line, place) => (line, place)).Where(l => !l.line.IsEmpty).Select(l => Read(l.line, l.place, currency)).ToList();
        List<Refusal> wrong = [.. read.SelectMany(r => r.Refusals)];
        if (read.Count == 0) wrong.Add(new("charge-empty", "Write at least one line: what it is, and its price.", "Lines[0].Text"));
        if (wrong.Count > 0) return Outcome<EntryId>.Refused(wrong);
        if (form.StudentId is { } student && !await db.Students.AnyAsync(s => s.Id == student && s.ErasedAt == null, stop)) return StudentRefusals.NotFound;
        var taxed = (await book.Terms(stop)).TaxRule.Of([.. read.Select(r => r.Value)]);
        var text = string.Join(", ", taxed.Select(l => l.Text));
        return await door.Write(new MoneyDeed(form.Id, form.PayerId, actor, "payer-charged"), facts => Task.FromResult<Outcome<LedgerEntry>>(
            book.Add(EntryKind.Charge, facts with { StudentId = form.StudentId, Text = text.Length <= 300 ? text : text[..299] + "…" }, Movements.Charge(taxed))), stop);
    }

    private static Outcome<TaxLine> Read(ChargeLine line, int place, Currency currency)
    {
        string Field(string name) => $"Lines[{place}].{name}";
        var price = MoneyEntry.Positive(line.Price, currency, Field(nameof(line.Price)));
        var rate = TaxEntry.Parse(line.TaxPercent, Field(nameof(line.TaxPercent)));
        List<Refusal> wrong = [.. price.Refusals, .. rate.Refusals, .. MoneyEntry.CheckWords(line.Text, 120, Field(nameof(line.Text)))];
        if (!OneLine.Shows(line.Text)) wrong.Add(new("charge-text", "Say what it is; it stands on the receipt.", Field(nameof(line.Text))));
        return wrong.Count > 0 ? Outcome<TaxLine>.Refused(wrong) : new TaxLine(line.Text.Trim(), price.Value, rate.Value);
    }
}
