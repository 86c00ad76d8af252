namespace CoachOffice.Domain.Ledger;

/// <summary>How a package stands.</summary>
/// <param name="Lessons">Bought.</param>
/// <param name="Used">Taken, what was taken back not counted.</param>
/// <param name="Reserved">Kept for lessons that are booked.</param>
/// <param name="Prepaid">What of its price is not yet earned, without tax.</param>
/// <param name="IsEnded">True when its rest was earned because it ended: only what is reserved may still be taken, a lesson whose mark was taken back and given again.</param>
public sealed record PackageCredits(int Lessons, int Used, int Reserved, Money Prepaid, bool IsEnded = false)
{
    /// <summary>Not yet taken, reserved ones too.</summary>
    public int Left => IsEnded ? Reserved : Math.Max(0, Lessons - Used);

    /// <summary>Neither taken nor reserved.</summary>
    public int Free => Math.Max(0, Left - Reserved);

    /// <summary>What the next lesson earns: an even part of the rest, the first ones a unit larger, so that all lessons earn exactly the price whatever is taken back between.</summary>
    public Money NextShare => Left > 0 ? Allocation.Evenly(Prepaid, Left)[0] : Money.Zero(Prepaid.Currency);

    /// <summary>What giving back the lessons left is worth: the rest, and the same part of the tax.</summary>
    /// <param name="text">What is given back.</param>
    /// <param name="tax">Tax of the whole sale.</param>
    /// <param name="rate">Its rate.</param>
    public TaxedLine Rest(string text, Money tax, TaxRate rate) => new(text, Prepaid, Allocation.By(tax, [Used, Left])[1], rate);
}
