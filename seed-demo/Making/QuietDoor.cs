using System.Text.RegularExpressions;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;
using MimeKit;

namespace CoachOffice.SeedDemo.Making;

/// <summary>Takes every letter and sends none. It keeps the private links of plans and the latest stop link per address, as the invented people would.</summary>
internal sealed partial class QuietDoor : IMailDoor
{
    private readonly List<string> _plans = [];
    private readonly Dictionary<string, string> _stops = new(StringComparer.Ordinal);

    /// <summary>How many letters came.</summary>
    public int Letters { get; private set; }

    /// <summary>While true the connection breaks after the letter and before the answer: nobody knows whether it arrived.</summary>
    public bool BreaksOff { get; set; }

    /// <inheritdoc/>
    public Task<Handover> HandOver(MimeMessage mail, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(mail);
        if (BreaksOff) return Task.FromResult(new Handover(HandoverResult.Unknown, Problems.SentUnknown));
        Letters++;
        var text = mail.TextBody ?? "";
        if (mail.MessageId is { } name && name.StartsWith(Terms.Of(MessageKind.PlanDelivery), StringComparison.Ordinal) && PlanLink().Match(text) is { Success: true } plan) _plans.Add(plan.Groups["token"].Value);
        if (StopLink().Match(text) is { Success: true } stop) _stops[mail.To.Mailboxes.First().Address] = stop.Groups["token"].Value;
        return Task.FromResult(Handover.Taken);
    }

    /// <summary>Tokens of plans delivered since this was last asked.</summary>
    public IReadOnlyList<string> TakePlans()
    {
        var taken = _plans.ToList();
        _plans.Clear();
        return taken;
    }

    /// <summary>The latest stop link sent to an address, or null.</summary>
    public string? StopOf(string address) => _stops.GetValueOrDefault(address);

    [GeneratedRegex("/p/(?<token>[A-Za-z0-9_-]{43})", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex PlanLink();

    [GeneratedRegex("/stop/(?<token>[A-Za-z0-9_-]{43})", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex StopLink();
}
