using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Replay;

namespace CoachOffice.Drafting.Tests.Replay;

/// <summary>Edits of measures and of what is wanted of them.</summary>
internal sealed class MeasureEdits(Random chance)
{
    public Rulebook MoveRange(Rulebook book)
    {
        var range = chance.OneOf(book.Ranges);
        var step = book.Find(range.Measure)?.Step ?? 1;
        var (low, high) = (range.Limits.Low + Shift(step), range.Limits.High + Shift(step));
        return low > high ? book : book.With(ranges: book.Ranges.Instead(range, range with { Limits = new Limits(low, high) }));
    }

    public Rulebook AddRange(Rulebook book)
    {
        var (measure, club) = (chance.OneOf(book.Measures), chance.OneOf<Club>());
        if (book.RangeOf(measure.Id, club) is not null) return MoveRange(book);
        return book.With(ranges: [.. book.Ranges, new WantedRange { Measure = measure.Id, Club = club, Limits = new Limits(chance.Heads() ? -2 : null, 6), Source = SourceMark.CommonPractice }]);
    }

    public Rulebook DropRange(Rulebook book)
    {
        var range = chance.OneOf(book.Ranges);
        return book.With(ranges: book.Ranges.Where(r => r != range));
    }

    public Rulebook ChangeAdjustment(Rulebook book)
    {
        if (chance.Heads() && book.Adjustments.Count > 0) return book.With(adjustments: book.Adjustments.Without(chance.Next(book.Adjustments.Count)));
        var measure = chance.OneOf(book.Measures);
        var fresh = new RangeAdjustment { Measure = measure.Id, FromAge = chance.Next(10, 70), LowBy = Shift(measure.Step ?? 1), HighBy = Shift(measure.Step ?? 1), Source = SourceMark.CommonPractice };
        return book.With(adjustments: [.. book.Adjustments, fresh]);
    }

    public Rulebook ChangeNumbers(Rulebook book)
    {
        var measure = chance.OneOf(book.Measures);
        return book.With(measures: book.Measures.Instead(measure, chance.Next(3) switch
        {
            0 => measure with { SetupError = measure.SetupError * Factor() },
            1 => measure with { SwingError = measure.SwingError * Factor() },
            _ => measure with { Step = measure.Step * Factor() },
        }));
    }

    public Rulebook ChangeMeasure(Rulebook book)
    {
        var measure = chance.OneOf(book.Measures);
        return book.With(measures: book.Measures.Instead(measure, Changed(measure)));
    }

    public Rulebook Rename(Rulebook book)
    {
        var measure = chance.OneOf(book.Measures);
        return book.With(measures: book.Measures.Instead(measure, measure with { Name = measure.Name + " again" }));
    }

    public Rulebook Reorder(Rulebook book)
    {
        var measures = book.Measures.ToList();
        var moved = chance.OneOf(measures);
        measures.Remove(moved);
        measures.Insert(chance.Next(measures.Count), moved);
        return book.With(measures: measures);
    }

    /// <summary>With what names it, as the reader would refuse the rest.</summary>
    public Rulebook Remove(Rulebook book)
    {
        var id = chance.OneOf(book.Measures.Where(m => book.Measures.All(d => d.Derived?.Parts.Contains(m.Id) != true)).ToList()).Id;
        var named = $"\"{id.Value}";
        return book.With(
            measures: book.Measures.Where(m => m.Id != id),
            ranges: book.Ranges.Where(r => r.Measure != id),
            patterns: book.Patterns.Where(p => !DefinitionText.Of(p).Contains(named, StringComparison.Ordinal)));
    }

    private Measure Changed(Measure measure) => chance.Next(11) switch
    {
        0 => measure with { StyleOnly = !measure.StyleOnly },
        1 => measure with { Outcome = !measure.Outcome },
        2 => measure with { Moment = chance.OneOf<Moment>() },
        3 => measure with { NoFaultSides = measure.NoFaultSides.Count > 0 ? [] : [chance.Heads() ? Side.Low : Side.High] },
        4 => measure with { Positive = measure.Positive + " side" },
        5 => measure with { Doubtful = new Limits(null, 0) },
        6 => measure with { Instruments = [chance.OneOf<Instrument>()] },
        7 => measure with { ScalesWithStature = !measure.ScalesWithStature },
        8 => measure with { NeedsFastVideo = !measure.NeedsFastVideo },
        9 => measure with { Derived = null },
        _ => measure with { HowTo = "Read it twice." },
    };

    private double Shift(double step) => chance.Next(3) == 0 ? 0 : Math.Round(step * ((chance.NextDouble() * 3) - 1.5), chance.Next(3));

    private double Factor() => 0.4 + (chance.NextDouble() * 1.6);
}
