using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps.Texts;

/// <summary>Whether a message goes to a telephone. Pure.</summary>
public static class WaysOfText
{
    /// <summary>The number, when the student wants notes about lessons as texts and there is a number for it; else null, and it goes by mail.</summary>
    public static string? Number(OfficeFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return facts.Student is { Contact.AppointmentsByText: true } student && MessagePurposes.Of(facts.Message.Kind) == MessagePurpose.Appointment ? student.TextNumberOn(facts.Today) : null;
    }
}
