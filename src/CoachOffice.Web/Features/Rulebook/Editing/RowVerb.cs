namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>Adds, moves or takes away a row of a form; everything typed stays.</summary>
internal static class RowVerb
{
    /// <summary>Does what a button says, e.g. <c>add:when</c>, <c>drop:when:2</c>, <c>up:steps:1</c>.</summary>
    public static void Do(string? verb, EntrySheet sheet, EntryForm form)
    {
        var parts = (verb ?? "").Split(':');
        if (parts.Length < 2 || sheet.RowsOf(parts[1]) is not { } rows) return;
        var row = parts.Length > 2 && int.TryParse(parts[2], out var at) ? at : -1;
        foreach (var name in rows.RowNames)
        {
            var column = form.Many(name).ToList();
            if (parts[0] == "add") column.Add("");
            else if (parts[0] == "drop" && row >= 0 && row < column.Count) column.RemoveAt(row);
            else if (parts[0] == "up" && row > 0 && row < column.Count) (column[row - 1], column[row]) = (column[row], column[row - 1]);
            form.Put(name, column);
        }
    }
}
