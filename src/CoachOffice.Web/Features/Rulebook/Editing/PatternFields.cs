using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>What the form of a pattern asks for.</summary>
internal static class PatternFields
{
    public static IReadOnlyList<SheetField> Of(SheetField id, SheetField name, SheetField source) =>
    [
        id, name,
        new LineField("precedence", "Place in the order (precedence)") { IsNumber = true, Hint = "Where two patterns claim the same finding, the smaller number wins. Causes early in the swing stand low." },
        new ChoiceField("clubs", "Only with", Terms.All<Club>()) { Several = true, Say = MeasureWords.Sentence, Hint = "None ticked: with every club." },
        new ConditionsField("when", "When") { Hint = "All of it must be there. \"or\" ties a line to the one above: one of the two is enough." },
        new RowsField("needs", "Only if measured and in range") { Pick = PickKind.Measure },
        new ConditionsField("unless", "Unless") { Patterns = true, Hint = "Any of these keeps the pattern from standing." },
        new RowsField("root", "The root is") { Pick = PickKind.Fault, Hint = "The cause to work on; of several, the first that is there. It must be among the lines under When." },
        new RowsField("explains", "It explains") { Pick = PickKind.Fault, Always = true, Hint = "Findings that follow from it." },
        new RowsField("explains-if-present", "It explains, if it is there") { Pick = PickKind.Fault },
        new RowsField("over", "Takes precedence over") { Pick = PickKind.Pattern, Hint = "Patterns that do not stand where this one claims the same." },
        new RowsField("before", "Is worked on before") { Pick = PickKind.Pattern, Hint = "The roots of these patterns wait for its root." },
        new RowsField("forbids", "No drills for") { Pick = PickKind.Fault, Hint = "Drills that work on these would make it worse." },
        new ChoiceField("unread", "While readings are missing", ["", "suggest"]) { Optional = true, Say = word => word.Length == 0 ? "a fault it would explain waits" : "the readings are only suggested" },
        new LineField("because", "What you say to the student") { IsLong = true },
        new LineField("rationale", "The reasoning") { IsLong = true },
        new LineField("debatable", "What can be said against it") { IsLong = true, Optional = true },
        source,
    ];
}
