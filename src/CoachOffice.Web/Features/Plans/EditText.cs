using CoachOffice.Domain.Plans;
using CoachOffice.Web.Shell;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Plans;

/// <summary>A coach's departure from the draft, said in a line.</summary>
internal static class EditText
{
    /// <summary>What was changed: "Shadow on the towel, repetitions".</summary>
    public static string What(PlanEdit edit, Domain.Plans.Rulebook book)
    {
        var parts = edit.What.Split('/');
        if (parts.Length < 2) return MeasureWords.Sentence(edit.What);
        var drill = parts[1].Split(':')[^1];
        var name = book.Find(DrillId.From(drill))?.Name ?? drill;
        return parts.Length > 2 ? $"{name}, {Counted(parts[2])}" : name;
    }

    /// <summary>Why, in the coach's coded and own words.</summary>
    public static string Why(PlanEdit edit) =>
        edit.Comment.Length > 0 ? $"{PlanWords.Of(edit.Reason)}: {edit.Comment}" : PlanWords.Of(edit.Reason);

    private static string Counted(string word) => word switch
    {
        "reps" => "repetitions",
        "sessions-per-week" => "days a week",
        _ => PlainWords.Of(word),
    };
}
