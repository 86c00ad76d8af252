using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students.Imports;
using CoachOffice.UseCases.Students.Imports;
using CoachOffice.UseCases.Tests.Fixtures;

namespace CoachOffice.UseCases.Tests.Students.Imports;

/// <summary>Somebody brings a list of students and goes on with it.</summary>
internal sealed class BringingAList(TestOffice office)
{
    public const string Head = "First name,Surname,Email,Phone,Date of birth,Guardian,Guardian email\n";

    public Task<Outcome<StudentFile>> Tries(byte[] bytes, Actor? by = null, string name = "students.csv") =>
        office.Do((OpenStudentFile open) => open.Of(name, new MemoryStream(bytes), by ?? office.Desk));

    public async Task<StudentFile> Brings(string text)
    {
        var file = await Tries(Encoding.UTF8.GetBytes(text));
        Assert.True(file.Succeeded, string.Join("; ", file.Refusals.Select(r => r.Sentence)));
        return file.Value;
    }

    public Task<StudentColumnsView> Columns(Guid file) => office.Must((ReadStudentColumns read) => read.Of(file, office.Desk));

    public Task<Outcome<StudentFile>> Says(Guid file, StudentColumnsForm form) => office.Do((SayStudentColumns say) => say.Of(file, form, office.Desk));

    /// <summary>Brings it and says what the form does not fill by itself.</summary>
    public async Task<Guid> BringsTold(string text, Func<StudentColumnsForm, StudentColumnsForm>? more = null)
    {
        var file = await Brings(text);
        var said = await Says(file.Id, (more ?? (f => f))((await Columns(file.Id)).Form));
        Assert.True(said.Succeeded, string.Join("; ", said.Refusals.Select(r => r.Sentence)));
        return file.Id;
    }

    public Task<StudentFileView> Looks(Guid file, RowFate? fate = null, int page = 1) => office.Must((PreviewStudentFile look) => look.Of(file, fate, page, office.Desk));

    /// <summary>Every row as "line fate: sentence".</summary>
    public async Task<IReadOnlyList<string>> Rows(Guid file) => [.. (await Looks(file)).Rows.Select(r => $"{r.Line} {Terms.Of(r.Fate)}{(r.Sentence.Length > 0 ? ": " + r.Sentence : "")}")];

    public Task<Guid> BringsIn(Guid file) => office.Must((BringStudents bring) => bring.Of(file, office.Desk));

    public async Task<Guid> BringsInTold(string text, Func<StudentColumnsForm, StudentColumnsForm>? more = null) => await BringsIn(await BringsTold(text, more));

    public Task<UndoneList> TakesBack(Guid file) => office.Must((UndoStudentFile undo) => undo.Of(file, office.Desk));
}
