using CoachOffice.Domain;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Ledger;
using Microsoft.AspNetCore.Mvc;

namespace CoachOffice.Web.Features.Ledger;

/// <summary>Charges something that no booking makes.</summary>
public sealed class ChargeModel(PayerPage account, ChargePayer charge, ReadMoneyTerms terms, INewIds ids) : PayerFormPage(account)
{
    private const int Lines = 4;

    [BindProperty]
    public ChargeFields Input { get; set; } = new();

    public TaxMode Mode { get; private set; }

    public async Task<IActionResult> OnGetAsync()
    {
        if (await Look() is { } answer) return answer;
        Input = new ChargeFields { Id = ids.Next() };
        return await Show();
    }

    public async Task<IActionResult> OnPostAsync()
    {
        if (await Look() is { } answer) return answer;
        if (Input.Id == Guid.Empty) return BadRequest();
        var form = new ChargeForm
        {
            Id = EntryId.From(Input.Id),
            PayerId = Payer,
            StudentId = Input.Student is { } student && student != Guid.Empty ? StudentId.From(student) : null,
            Lines = [.. Input.Lines.Select(l => new ChargeLine((l.Text ?? "").Trim(), l.Price ?? "", l.TaxPercent ?? ""))],
        };
        var charged = await charge.From(form, Actor);
        if (charged.Succeeded) return Done(Home, "The charge is written.");
        await Show();
        return Refuse(charged.Refusals);
    }

    private async Task<IActionResult> Show()
    {
        Mode = (await terms.Now()).TaxMode;
        while (Input.Lines.Count < Lines) Input.Lines.Add(new ChargeLineFields());
        return Page();
    }
}
