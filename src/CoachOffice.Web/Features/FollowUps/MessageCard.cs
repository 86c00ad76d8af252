using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;
using NodaTime;

namespace CoachOffice.Web.Features.FollowUps;

/// <summary>A message in a list, with the way back to the same list after something was done.</summary>
internal sealed record MessageCard(MessageRow Row, DateTimeZone Zone, LocalDate Today, string Back)
{
    public bool IsOpen => Row.State is MessageState.Waiting or MessageState.AwaitsApproval or MessageState.Held or MessageState.NeedsAttention or MessageState.Unknown;

    /// <summary>The list holds one student's messages already.</summary>
    public bool IsOfOne => Back.Contains("of=", StringComparison.Ordinal);

    public string To(string handler) => $"/follow-ups?handler={handler}&{Back}";
}
