using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.Drafting.Reading.Lessons;

/// <summary>Reads one lesson written as JSON into the facts of a draft: defaults filled in, every value in its measure's own unit. All faults are found in one go.</summary>
public static class LessonReader
{
    /// <summary>The facts, or every fault. An unknown drill under <c>tried</c> is only warned of.</summary>
    /// <param name="fileName">The file as the person knows it, for the faults.</param>
    /// <param name="bytes">The file's bytes: UTF-8, at most 1 MiB.</param>
    /// <param name="book">The rulebook whose measures and drills are meant.</param>
    public static ReadResult<LessonFacts> Read(string fileName, ReadOnlyMemory<byte> bytes, Rulebook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var faults = new FaultList();
        var root = JsonTree.Read(fileName, bytes, faults);
        var facts = root is not null && Entry.Of(root, faults) is { } entry ? Facts(entry, book) : null;
        return faults.Result(() => facts!);
    }

    /// <summary>The same from a file of the disk; a missing or too big file is a fault.</summary>
    public static ReadResult<LessonFacts> FromFile(string file, Rulebook book)
    {
        var faults = new FaultList();
        var found = new FileInfo(file);
        if (!found.Exists) faults.Add(new Position(file, 1, 1), Fault.WholeFile, "there is no such file");
        else if (found.Length > FileText.MostBytes) FileText.TooBig(file, found.Length, faults);
        else return Read(file, File.ReadAllBytes(file), book);
        return faults.Result<LessonFacts>(() => throw new InvalidOperationException("There was a fault."));
    }

    private static LessonFacts Facts(Entry entry, Rulebook book)
    {
        var asOf = AsOf(entry);
        var facts = new LessonFacts
        {
            AsOf = asOf,
            Student = new StudentEntry(book, asOf).Read(entry),
            Club = entry.Word<Club>("club"),
            Readings = new ReadingEntries(book, entry.Faults).Read(entry),
            Tried = [.. entry.ItemsIf("tried").Select(item => Tried(item, book, entry.Faults)).OfType<TriedDrill>()],
        };
        entry.Close();
        return facts;
    }

    private static LocalDate AsOf(Entry entry)
    {
        if (entry.Require("asOf") is not { } node) return LocalDate.MaxIsoValue;
        var before = entry.Faults.Count;
        var text = Single.Text(node, entry.Faults);
        if (LocalDatePattern.Iso.Parse(text) is { Success: true, Value: { Year: >= 1990 and <= 2199 } date }) return date;
        if (entry.Faults.Count == before) entry.Faults.Add(node, $"{Words.Quote(text)} is no day from 1990 to 2199; write it as 2026-05-04");
        return LocalDate.MaxIsoValue;
    }

    private static TriedDrill? Tried(Node item, Rulebook book, FaultList faults)
    {
        if (Entry.Of(item, faults) is not { } entry) return null;
        var tried = new TriedDrill(DrillId.From(entry.Text("drill")), entry.Whole("sessions", 1, 10_000), entry.Word<TriedOutcome>("outcome"));
        entry.Close();
        if (entry.Sound && book.Find(tried.Drill) is null)
        {
            var nearest = Words.Closest(tried.Drill.Value, book.Drills.Select(d => d.Id.Value));
            faults.Warn(entry.Find("drill")!, $"the rulebook has no drill {Words.Quote(tried.Drill.Value)}; taken as tried all the same{(nearest is null ? "" : $"; nearest: {nearest}")}");
        }

        return entry.Sound ? tried : null;
    }
}
