using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Tests.Replay;

/// <summary>Edits of patterns.</summary>
internal sealed class PatternEdits(Random chance)
{
    public Rulebook Add(Rulebook book)
    {
        var (like, other) = (chance.OneOf(book.Patterns), chance.OneOf(book.Patterns));
        var fresh = like with
        {
            Id = PatternId.From($"added-{chance.Next()}"),
            Precedence = chance.Next(1, 80),
            When = [.. like.When.Take(1), .. other.When.Take(1)],
            Explains = [.. like.Explains, .. other.Explains],
            Because = "Added.",
        };
        return book.With(patterns: [.. book.Patterns, fresh]);
    }

    public Rulebook Remove(Rulebook book) => book.With(patterns: book.Patterns.Without(chance.Next(book.Patterns.Count)));

    public Rulebook LoosenTwo(Rulebook book)
    {
        for (var i = 0; i < 2; i++) book = Change(book, Looser);
        return book;
    }

    public Rulebook Tighten(Rulebook book) => Change(book, p => chance.Next(4) switch
    {
        0 => p with { When = [.. p.When.Select(c => c is OutCondition o ? o with { AtLeast = Grade.Moderate } : c)] },
        1 => p with { Needs = [.. p.Needs, chance.OneOf(book.Measures).Id] },
        2 => p with { Unless = [.. p.Unless, new OutCondition(chance.OneOf(book.Measures).Id, Side.None)] },
        _ => p with { Clubs = [chance.OneOf<Club>()] },
    });

    public Rulebook SayElse(Rulebook book) => Change(book, p => chance.Next(8) switch
    {
        0 => p with { Because = p.Because + " Again." },
        1 => p with { Precedence = chance.Next(1, 80) },
        2 => p with { Over = [chance.OneOf(book.Patterns).Id] },
        3 => p with { Before = [chance.OneOf(book.Patterns).Id] },
        4 => p with { Forbids = [chance.OneOf(book.Drills.Where(d => d.Trains.Count > 0).ToList()).Trains[0]] },
        5 => p with { Explains = [.. p.Explains.Skip(1), chance.OneOf(book.Patterns).Root[0]] },
        6 => p with { Root = [chance.OneOf(book.Patterns).Root[0]] },
        _ => p with { Unread = p.Unread is null ? UnreadReadings.Suggest : null },
    });

    public Rulebook Reword(Rulebook book) => Change(book, p => p with { Name = p.Name + "!", Rationale = "Seen often.", Debatable = "It may be the other way round." });

    private Pattern Looser(Pattern p) => chance.Next(4) switch
    {
        0 => p with { Needs = [.. p.Needs.Skip(1)] },
        1 => p with { Unless = [.. p.Unless.Skip(1)] },
        2 when p.When.Count > 1 => p with { When = p.When.Without(chance.Next(p.When.Count)) },
        _ => p with { When = [.. p.When.Select(Looser)] },
    };

    private Condition Looser(Condition condition) => condition switch
    {
        OutCondition o => chance.Heads() ? o with { AtLeast = Grade.Mild } : o with { Side = Side.None },
        ValueCondition v => v with { Bound = v.Side == Side.Low ? v.Bound + 3 : v.Bound - 3 },
        ReadingsCondition r => r with { AtLeast = 1 },
        OthersInRangeCondition r => r with { AtLeast = 1 },
        AnyOfCondition a => a with { Any = [.. a.Any.Select(Looser)] },
        _ => condition,
    };

    private Rulebook Change(Rulebook book, Func<Pattern, Pattern> change)
    {
        var pattern = chance.OneOf(book.Patterns);
        return book.With(patterns: book.Patterns.Instead(pattern, change(pattern)));
    }
}
