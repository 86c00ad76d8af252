namespace CoachOffice.Domain.Access;

/// <summary>Who does something. Every use case takes one and every audit row names one.</summary>
/// <param name="Account">The account; null for the clock and for a student behind a private link.</param>
/// <param name="Name">As shown in histories.</param>
/// <param name="Policy">What they may do; null for the clock and for a student.</param>
public sealed record Actor(AccountId? Account, string Name, Policy? Policy)
{
    /// <summary>Due work done by the program itself.</summary>
    public static Actor Clock { get; } = new(null, "the clock", null);

    /// <summary>A student, or their guardian, behind a private link.</summary>
    public static Actor Student { get; } = new(null, "the student", null);

    /// <summary>May record lessons, draft and approve plans.</summary>
    public bool MayTeach => Policy is Access.Policy.Owner or Access.Policy.Coach;

    /// <summary>May change the rules that plans are drafted by: whoever teaches by them.</summary>
    public bool MayChangeRules => MayTeach;

    /// <summary>May keep students' details.</summary>
    public bool MayKeepStudents => Policy is not null;

    /// <summary>May take payments, sell packages, charge by hand and write receipts.</summary>
    public bool MayTakePayments => Policy is not null;

    /// <summary>May give money back, write off, reverse, and see what was earned.</summary>
    public bool MayKeepBooks => MayOwn;

    /// <summary>May change the practice and its accounts, and erase for good.</summary>
    public bool MayOwn => Policy is Access.Policy.Owner;
}
