using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using Fluid;

namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>Whether words may go out: they can be read, name only what there is, hold what is needed, and leave the reader free. Says what to mend.</summary>
public sealed class CheckWording(Letters letters)
{
    private const int LongestSubject = 150;
    private const int LongestBody = 6_000;

    private static readonly FluidParser Parser = new();

    /// <summary>Everything that stands against words of a kind; empty when they may go.</summary>
    public IReadOnlyList<Refusal> Of(MessageKind kind, LetterWords words)
    {
        ArgumentNullException.ThrowIfNull(words);
        var form = Form(words).ToList();
        if (form.Count > 0) return form;
        if (!Parser.TryParse(words.AsTemplate, out var template, out var error)) return [new("wording-unread", $"The marks in double braces cannot be read: {error} Compare them with the shipped words.", nameof(words.Body))];
        var look = TemplateLook.At(template, LetterParts.Known(kind).Select(p => p.Name));
        var marks = Marks(look).ToList();
        return marks.Count > 0 ? marks : Read(kind, words, look);
    }

    private static IEnumerable<Refusal> Form(LetterWords words)
    {
        if (words.Subject.Trim().Length == 0) yield return new("wording-subject", "Write a subject.", nameof(words.Subject));
        if (words.Subject.Length > LongestSubject || words.Subject.Contains('\n', StringComparison.Ordinal)) yield return new("wording-subject", $"The subject is one line of up to {LongestSubject} characters.", nameof(words.Subject));
        if (words.Body.Trim().Length == 0) yield return new("wording-body", "Write what the letter says.", nameof(words.Body));
        if (words.Body.Length > LongestBody) yield return new("wording-body", $"A letter has up to {LongestBody} characters; this one has {words.Body.Length}.", nameof(words.Body));
    }

    private static IEnumerable<Refusal> Marks(TemplateLook look)
    {
        foreach (var name in look.Unknown) yield return new("wording-unknown", $"There is nothing called \"{name}\" in this letter. The names it knows are listed beside it.", nameof(LetterWords.Body));
        foreach (var deed in look.Refused) yield return new("wording-refused", $"Letters cannot use {deed}. Names, \"if\", \"unless\", \"case\" and \"for\" over a list are there.", nameof(LetterWords.Body));
    }

    private List<Refusal> Read(MessageKind kind, LetterWords words, TemplateLook look)
    {
        var (refusals, readers) = (new List<Refusal>(), new List<WordingReader>());
        foreach (var example in LetterExamples.Of(kind))
        {
            if (Rendered(kind, words, example) is not { } text) return [new("wording-endless", "This letter becomes too long or never ends. Take a loop out.", nameof(words.Body))];
            readers.Add(new WordingReader(text, example.ForGuardian));
            refusals.AddRange(Missing(kind, example, text));
        }

        refusals.AddRange(WordingLint.Of(look.Words, readers, MessagePurposes.Of(kind)).Select(f => new Refusal("wording-words", f.Sentence, nameof(words.Body))));
        return [.. refusals.Distinct()];
    }

    private string? Rendered(MessageKind kind, LetterWords words, LetterExample example)
    {
        try
        {
            return letters.Above(kind, example.Facts, words);
        }
        catch (InvalidOperationException)
        {
            // The limits of steps and of length speak by exceptions; to whoever writes it is one answer.
            return null;
        }
    }

    private static IEnumerable<Refusal> Missing(MessageKind kind, LetterExample example, string text)
    {
        var body = LetterWords.Of(text).Body;
        var links = LetterBlock.Of(body).Where(b => b.Kind == "link").Select(b => b.Lines[0]).ToHashSet(StringComparer.Ordinal);
        foreach (var name in LetterParts.Needed(kind))
        {
            var (isLink, values) = (name.EndsWith("link", StringComparison.Ordinal), LetterParts.Values(example.Facts, name));
            if (isLink && !values.All(links.Contains)) yield return new("wording-link", $"As {example.Reader} gets it, {{{{ {name} }}}} does not stand on a line of its own with an empty line above and below. Without it nobody can open the page.", nameof(LetterWords.Body));
            else if (!isLink && !values.All(v => text.Contains(v, StringComparison.Ordinal))) yield return new("wording-needs", $"As {example.Reader} gets it, {name.Replace('_', ' ')} is missing. Put {{{{ {name} }}}} back, or the loop over it.", nameof(LetterWords.Body));
        }
    }
}
