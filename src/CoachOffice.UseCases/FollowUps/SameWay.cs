using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Plans;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>How a number is read the same way as before, in a line: otherwise nobody knows whether it moved or was read differently. Pure.</summary>
public static class SameWay
{
    /// <summary>The measure with the swings, the club and the camera of the lesson; its name alone when the lesson did not read it.</summary>
    public static string Of(Book book, FaultId fault, LetterSource lesson)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(lesson);
        var name = FaultWords.Measure(book, fault);
        if (!lesson.Swings.TryGetValue(fault.Measure, out var swings)) return name;
        var day = lesson.LessonOn.ToString("dddd d MMMM", CultureInfo.InvariantCulture);
        return $"{name}: {(swings == 1 ? "one swing" : $"{swings} swings")} with the {Terms.Of(lesson.Club)}, {Camera(book.Find(fault.Measure)?.View, day)}";
    }

    private static string Camera(View? view, string day) => view switch
    {
        View.FaceOn => $"filmed face-on, the camera where it stood on {day}",
        View.DownTheLine => $"filmed down the line, the camera where it stood on {day}",
        View.Device => $"by the same device as on {day}",
        _ => $"filmed from the same side as on {day}",
    };
}
