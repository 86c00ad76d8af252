using System.Collections.Concurrent;
using System.Text.Encodings.Web;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps.Wordings;
using Fluid;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Renders letters from the templates beside this file, or from the practice's own words. They are written once, as text; the HTML form is the same blocks in a page.</summary>
public sealed class Letters
{
    private const int MostKept = 200;
    private const int LongestLetter = 65_536;

    private static readonly FluidParser Parser = new();
    private readonly TemplateOptions _options = Options();
    private readonly TemplateOptions _ofPeople = Options();
    private readonly ConcurrentDictionary<LetterWords, IFluidTemplate> _own = new();
    private readonly Dictionary<string, string> _sources = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IFluidTemplate> _templates = new(StringComparer.Ordinal);

    public Letters()
    {
        // Templates people wrote are data: they know a few filters, and an end comes to whatever they do.
        (_ofPeople.MaxSteps, _ofPeople.MaxRecursion) = (5_000, 20);
        foreach (var name in (string[])[.. Enum.GetValues<MessageKind>().Select(k => Terms.Of(k)), "closing", "office-closing", "page"])
        {
            _sources[name] = Read(name);
            _templates[name] = Parser.Parse(_sources[name]);
        }
    }

    /// <summary>The words a kind is shipped with.</summary>
    public LetterWords Shipped(MessageKind kind) => LetterWords.Of(_sources[Terms.Of(kind)]);

    /// <summary>The letter of a kind that belongs to a plan. Its subject is one clean line.</summary>
    public Letter Render(MessageKind kind, LetterFacts facts, LetterWords? own = null) => Render(kind, "closing", facts, own);

    /// <summary>The letter of any other kind, by the facts of its family.</summary>
    public Letter Render(MessageKind kind, OfficeLetterFacts facts, LetterWords? own = null) => Render(kind, "office-closing", facts, own);

    /// <summary>What stands above the closing, for judging words alone.</summary>
    public string Above(MessageKind kind, object facts, LetterWords? own) => own is null ? Text(Terms.Of(kind), facts) : OwnText(own, facts);

    private Letter Render(MessageKind kind, string closing, object facts, LetterWords? own)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var body = Above(kind, facts, own);
        var cut = body.IndexOf('\n', StringComparison.Ordinal);
        var subject = CleanText.Line(body[..cut]);
        var blocks = LetterBlock.Of(body[(cut + 1)..] + "\n\n" + Text(closing, facts));
        var html = Html(facts, subject, blocks);
        return new Letter(subject, string.Join("\n\n", blocks.Select(b => b.AsText)) + "\n", html);
    }

    private static TemplateOptions Options()
    {
        var options = new TemplateOptions { MemberAccessStrategy = new DefaultMemberAccessStrategy { MemberNameStrategy = MemberNameStrategies.SnakeCase } };
        options.MemberAccessStrategy.Register<LetterFacts>();
        options.MemberAccessStrategy.Register<LetterBlock>();
        foreach (var facts in typeof(OfficeLetterFacts).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(OfficeLetterFacts)))) options.MemberAccessStrategy.Register(facts);
        return options;
    }

    private static string Read(string name)
    {
        var assembly = typeof(Letters).Assembly;
        using var stream = assembly.GetManifestResourceStream($"CoachOffice.UseCases.FollowUps.Letters.{name}.liquid")
            ?? throw new InvalidOperationException($"The letter '{name}' is missing.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private string Text(string name, object facts) => _templates[name].Render(new TemplateContext(facts, _options), NullEncoder.Default);

    private string OwnText(LetterWords own, object facts)
    {
        if (_own.Count > MostKept) _own.Clear();
        var template = _own.GetOrAdd(own, static words => Parser.Parse(words.AsTemplate));
        using var bounded = new BoundedWriter(LongestLetter);

        // In memory from end to end: it is done when it returns.
        template.RenderAsync(bounded, NullEncoder.Default, new TemplateContext(facts, _ofPeople)).AsTask().GetAwaiter().GetResult();
        return bounded.ToString();
    }

    private string Html(object facts, string subject, IReadOnlyList<LetterBlock> blocks)
    {
        var context = new TemplateContext(facts, _options);
        context.SetValue("subject", subject);
        context.SetValue("blocks", blocks);
        return _templates["page"].Render(context, HtmlEncoder.Default);
    }
}
