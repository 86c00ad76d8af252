namespace CoachOffice.UseCases.FollowUps;

/// <summary>Codes of why a message did not go, in words for the coach.</summary>
public static class Problems
{
    /// <summary>It was on its way when the connection or the program broke off.</summary>
    public const string SentUnknown = "sent-unknown";

    /// <summary>The person stopped messages of its purpose.</summary>
    public const string MessagesStopped = "messages-stopped";

    /// <summary>The student stopped plans in the post.</summary>
    public const string PlansStopped = "plans-stopped";

    /// <summary>The guardian withdrew; nothing goes out.</summary>
    public const string GuardianWithdrew = "guardian-withdrew";

    /// <summary>Mail to this address came back for good.</summary>
    public const string AddressBounced = "address-bounced";

    /// <summary>The words; the code itself when it is new.</summary>
    public static string InWords(string code) => code switch
    {
        "no-address" => "The student has no mail address. Add one, then send it again; the plan can also be printed.",
        "no-guardian" => "The student is under 18 and has no guardian's address. Add the guardian, then send it again.",
        "no-recipient" => "There is no mail address to send it to. Add one, then send it again.",
        "no-letter" => "This kind of message has no letter in this edition of the program.",
        "no-sender" => "The practice has no sender address yet. Set it in the settings, then send it again.",
        SentUnknown => "The connection broke while it was on its way, so it may have arrived. Ask before you send it again; if it is there, say so here.",
        "recipient-refused" => "The mail server refused the address. Check it, then send it again.",
        "sender-refused" => "The mail server refused the practice's own address. Check the settings, then send it again.",
        "message-refused" => "The mail server refused the message.",
        "mail-server-down" => "The mail server could not be reached.",
        "mail-server-silent" => "The mail server did not answer in time.",
        "mail-server-sign-in" => "The mail server refused our name or password. Check the settings.",
        "mail-server-encryption" => "No safe connection to the mail server came about. Check port and encryption in the settings.",
        "mail-folder-closed" => "The folder for mail could not be written.",
        "no-mail" => "There is no mail address; the booking was not told by mail.",
        "booking-past" => "The lesson was over, cancelled or on again before it went out.",
        "offer-over" => "The offer had ended before it went out.",
        "superseded" => "A newer message took its place.",
        "gave-up" => "The program stumbled over this message several times.",
        "answered" => "What it asked for was done before it went out.",
        "told-already" => "Another message asked for the same that day.",
        "two-unanswered" => "Two notes went unanswered; a third would not help.",
        "minor" => "Minors get no notes of this kind.",
        "gate-opened" => "The stage was finished before.",
        "plan-completed" or "plan-revoked" or "plan-replaced" or "plan-not-active" => "The plan ended before.",
        _ => OfStops(code),
    };

    private static string OfStops(string code) => code switch
    {
        AddressBounced => "Mail to this address came back for good. Correct the address, then send it again; if it is right, say so under \"How messages reach them\" on the student's page.",
        "text-refused" => "The gateway for text messages refused it. Check the number, then send it again.",
        "text-gateway-down" or "text-gateway-busy" => "The gateway for text messages could not take it.",
        MessagesStopped => "They asked for no more messages of this purpose.",
        PlansStopped => "They asked for no more plans by mail. Print the plan or hand over its link; when they ask for plans again, allow them on the student's page.",
        GuardianWithdrew => "The guardian withdrew, so nothing goes out. Speak with the guardian; when they agree again, say so on the student's page.",
        _ => OfTheOffice(code),
    };

    private static string OfTheOffice(string code) => code switch
    {
        "kind-off" => "The practice turned this kind of message off before it went out.",
        "nothing-today" => "That morning there was nothing to list.",
        "list-not-wanted" => "The coach had turned the morning list off before it went out.",
        "package-over" => "The lessons were booked, or the package was over, before it went out.",
        "paid" => "It was paid before it went out.",
        "payment-reversed" => "The payment was reversed before its receipt went out.",
        "payer-erased" => "The payer was erased before it went out.",
        _ => code,
    };
}
