using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.FollowUps;

/// <summary>A list of messages as the query of an address.</summary>
internal static class FollowUpQuery
{
    public static string Of(MessageFilter filter, MessageChoice choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        var parts = new List<string> { $"show={Terms.Of(filter)}" };
        if (choice.Kind is { } kind) parts.Add($"kind={Terms.Of(kind)}");
        if (choice.Student is { } student) parts.Add($"of={student.Value}");
        if (choice.Day is { } day) parts.Add($"on={DayEntry.Text(day)}");
        return string.Join('&', parts);
    }
}
