using System.Text.Encodings.Web;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using Fluid;
using Terms = CoachOffice.Domain.Terms;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Renders letters from the templates beside this file. The words are written once, as text; the HTML form is the same blocks in a page.</summary>
public sealed class Letters
{
    private static readonly FluidParser Parser = new();
    private readonly TemplateOptions _options = new();
    private readonly Dictionary<string, IFluidTemplate> _templates;

    public Letters()
    {
        _options.MemberAccessStrategy = new DefaultMemberAccessStrategy { MemberNameStrategy = MemberNameStrategies.SnakeCase };
        _options.MemberAccessStrategy.Register<LetterFacts>();
        _options.MemberAccessStrategy.Register<LetterBlock>();
        foreach (var facts in typeof(OfficeLetterFacts).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(OfficeLetterFacts)))) _options.MemberAccessStrategy.Register(facts);
        _templates = new(StringComparer.Ordinal);
        foreach (var name in (string[])[.. Enum.GetValues<MessageKind>().Select(k => Terms.Of(k)), "closing", "office-closing", "page"]) _templates[name] = Read(name);
    }

    /// <summary>The letter of a kind that belongs to a plan. Its subject is one clean line.</summary>
    public Letter Render(MessageKind kind, LetterFacts facts) => Render(kind, "closing", facts);

    /// <summary>The letter of any other kind, by the facts of its family.</summary>
    public Letter Render(MessageKind kind, OfficeLetterFacts facts) => Render(kind, "office-closing", facts);

    private Letter Render(MessageKind kind, string closing, object facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var body = Text(Terms.Of(kind), facts);
        var cut = body.IndexOf('\n', StringComparison.Ordinal);
        var subject = CleanText.Line(body[..cut]);
        var blocks = LetterBlock.Of(body[(cut + 1)..] + "\n\n" + Text(closing, facts));
        var html = Html(facts, subject, blocks);
        return new Letter(subject, string.Join("\n\n", blocks.Select(b => b.AsText)) + "\n", html);
    }

    private static IFluidTemplate Read(string name)
    {
        var assembly = typeof(Letters).Assembly;
        using var stream = assembly.GetManifestResourceStream($"CoachOffice.UseCases.FollowUps.Letters.{name}.liquid")
            ?? throw new InvalidOperationException($"The letter '{name}' is missing.");
        using var reader = new StreamReader(stream);
        return Parser.Parse(reader.ReadToEnd());
    }

    private string Text(string name, object facts) => _templates[name].Render(Context(facts), NullEncoder.Default);

    private string Html(object facts, string subject, IReadOnlyList<LetterBlock> blocks)
    {
        var context = Context(facts);
        context.SetValue("subject", subject);
        context.SetValue("blocks", blocks);
        return _templates["page"].Render(context, HtmlEncoder.Default);
    }

    private TemplateContext Context(object facts) => new(facts, _options);
}
