using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Own;
using CoachOffice.Drafting.Writing;
using CoachOffice.UseCases.Rulebook;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>An entry's form as it came in: what is asked for, and the entry as text.</summary>
internal sealed class EntryPost
{
    public EntryPost(IFormCollection posted, EntryKind kind, EntryDesk desk)
    {
        (Kind, Desk) = (kind, desk);
        Form = EntryForm.From(posted);
        Words = new PickWords(desk.Book, desk.Waiting);
        Sheet = EntrySheets.Of(kind);
        IsText = Sheet is null || Form.One("as") == "text";
        if (Sheet is null || IsText) Text = Form.Many("text") is [var typed, ..] ? typed.ReplaceLineEndings("\n") : "";
        else
        {
            if (desk.Id is null) NameIt();
            RowVerb.Do(Form.One("row"), Sheet, Form);
            Text = EntryText.Write(Sheet.Write(Form, Words));
        }
    }

    public EntryKind Kind { get; }

    public EntryDesk Desk { get; }

    public EntryForm Form { get; }

    public PickWords Words { get; }

    public EntrySheet? Sheet { get; }

    public bool IsText { get; }

    public string Text { get; }

    public int Edition => int.TryParse(Form.One("edition"), out var edition) ? edition : Desk.Edition;

    /// <summary>The wish; null when a row was only added or moved or the other view was asked for.</summary>
    public string? Wish => Form.One("row").Length > 0 || Form.One("do") is "as-text" or "as-form" ? null : Form.One("do");

    /// <summary>Shown as text from now on.</summary>
    public bool ShowText => Form.One("do") switch { "as-text" => true, "as-form" => false, _ => IsText };

    /// <summary>The entry that is meant; null when the text does not say which one it is.</summary>
    public EntryId? Id => Desk.Id ?? OwnFile.IdIn(Kind, Text);

    public EntryEdit Edit(EntryId id) => Wish switch
    {
        "remove" => new EntryEdit(id, EntryDeed.Remove),
        "back" => new EntryEdit(id, EntryDeed.BackToShipped),
        _ => new EntryEdit(id, EntryDeed.Write, Text),
    };

    // A new entry gets its id from its name, so that nobody must think of one.
    private void NameIt()
    {
        if (Form.One("id").Length == 0 && Form.One("name").Length > 0 && Sheet!.Fields.Any(f => f.Name == "id")) Form.Put("id", EntryAddress.IdFor(Form.One("name")));
    }
}
