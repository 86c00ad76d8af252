using System.Text.Json.Nodes;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Writing;
using CoachOffice.UseCases.Rulebook;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>Makes the editor's screen from what is kept or from what was sent.</summary>
internal static class EntryScreens
{
    /// <summary>The entry as the editor opens it.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="desk">The entry.</param>
    /// <param name="asText">Open it as text.</param>
    /// <param name="forWhat">For a new entry: the fault or pattern it is to serve.</param>
    public static EntryScreen Opened(EntryKind kind, EntryDesk desk, bool asText, string? forWhat)
    {
        var words = new PickWords(desk.Book, desk.Waiting);
        var text = desk.Text ?? (desk.Id is null ? EntryText.Write(Blank(kind, desk.Book, forWhat)) : "");
        var screen = new EntryScreen { Kind = kind, Desk = desk, Words = words, Text = text, Written = desk.Id };
        return Shown(screen, EntrySheets.Of(kind), asText);
    }

    /// <summary>The same with what was sent, whatever it is.</summary>
    public static EntryScreen Sent(EntryPost post, WorkCheck? check)
    {
        var screen = new EntryScreen { Kind = post.Kind, Desk = post.Desk, Words = post.Words, Text = post.Text, Written = post.Id, Check = check };
        if (post.IsText || post.ShowText) return Shown(screen, post.Sheet, post.ShowText);
        return screen with { Sheet = post.Sheet, Form = post.Form };
    }

    private static EntryScreen Shown(EntryScreen screen, EntrySheet? sheet, bool asText)
    {
        if (sheet is null || asText) return screen with { AsText = true };
        var tree = screen.Text.Length == 0 ? [] : TypedEntry.Tree(screen.Kind, screen.Text);
        if (tree is null || (screen.Desk.Id is not null && !sheet.Holds(tree, screen.Words))) return screen with { AsText = true };
        return screen with { Sheet = sheet, Form = sheet.Fill(tree, screen.Words) };
    }

    private static JsonObject Blank(EntryKind kind, Domain.Plans.Rulebook book, string? forWhat) => (kind, forWhat) switch
    {
        (EntryKind.Drill, { Length: > 0 }) => new JsonObject { ["trains"] = new JsonArray([.. OfLadder(book, forWhat)]) },
        (EntryKind.Progression, { Length: > 0 }) => new JsonObject { ["faults"] = new JsonArray(forWhat) },
        (EntryKind.Pattern, { Length: > 0 }) => new JsonObject { ["when"] = new JsonArray(forWhat), ["root"] = new JsonArray(forWhat) },
        (EntryKind.Case, { Length: > 0 }) => new JsonObject { ["pattern"] = forWhat },
        (EntryKind.Range, { Length: > 0 }) => new JsonObject { ["measure"] = forWhat },
        _ => [],
    };

    // A ladder takes only drills that train all its faults.
    private static IEnumerable<JsonNode?> OfLadder(Domain.Plans.Rulebook book, string fault) =>
        FaultId.Find(fault) is { } id && book.For(id) is { } ladder ? ladder.Faults.Select(f => (JsonNode?)f.ToString()) : [fault];
}
