namespace CoachOffice.Web.Features.Ledger;

/// <summary>A charge by hand as typed.</summary>
public sealed class ChargeFields
{
    /// <summary>Made when the form was shown: sent twice it is one entry.</summary>
    public Guid Id { get; set; }

    public Guid? Student { get; set; }

    public IList<ChargeLineFields> Lines { get; set; } = [];
}
