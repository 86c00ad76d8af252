using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.SeedDemo.Swings;

/// <summary>How an invented person really swings; readings are taken from it with the error of each measure.</summary>
internal sealed class Swing
{
    private const double Inside = 0.7;
    private const double FarOut = 1.8;
    private const double Adult = 175;
    private const double Mended = 0.8;

    private readonly Rulebook _book;
    private readonly SwingBody _body;
    private readonly Chance _chance;
    private readonly Dictionary<SwingHabit, double> _way;
    private readonly Dictionary<MeasureId, double> _own = [];

    public Swing(Rulebook book, SwingBody body, IReadOnlyList<string> habits, Chance chance)
    {
        (_book, _body, _chance) = (book, body, chance);
        _way = habits.Select(SwingHabits.Of).ToDictionary(h => h, _ => 0.0);
    }

    /// <summary>What a coach reads in a lesson with this person.</summary>
    public IReadOnlyList<Measure> Read => [.. _way.Keys.SelectMany(h => h.Faults.Select(f => f.Measure).Concat(h.Also)).Concat(Usual).Distinct(StringComparer.Ordinal)
        .Select(id => _book.Find(MeasureId.From(id))!).Where(m => HeldTo(m) is not null).OrderBy(m => m.Row)];

    private static readonly string[] Usual =
        ["address-spine-tilt", "top-shoulder-turn", "downswing-head-shift", "impact-spine-tilt", "impact-shaft-lean", "club-path", "face-to-path", "attack-angle"];

    /// <summary>Practice moves the habit a fault belongs to, by the days it stands for.</summary>
    public void Practised(FaultId fault, int days)
    {
        var habit = _way.Keys.FirstOrDefault(h => h.Faults.Any(f => f.Measure == fault.Measure.Value && f.Side == fault.Side));
        if (habit is not null) _way[habit] = Math.Clamp(_way[habit] + (Step() * Math.Clamp(days, 1, 6)), -0.8, _body.Response == Response.GoesThrough ? 4 : 1.15);
    }

    /// <summary>One thing mended, the next one shows: a habit that has nothing to do with those before.</summary>
    public void ShowNext()
    {
        if (_way.Values.Any(way => way < Mended)) return;
        var known = _way.Keys.SelectMany(h => h.Faults).Select(f => f.Measure).ToHashSet(StringComparer.Ordinal);
        var fresh = SwingHabits.For(_body.Club).Where(h => h.Faults.All(f => !known.Contains(f.Measure) && _book.Find(MeasureId.From(f.Measure)) is { } m && HeldTo(m) is not null)).ToList();
        if (fresh.Count > 0) _way[_chance.Of(fresh)] = 0;
    }

    /// <summary>True when the habit of a fault is gone.</summary>
    public bool IsCured(FaultId fault) => _way.Any(w => w.Value >= Mended && w.Key.Faults.Any(f => f.Measure == fault.Measure.Value));

    /// <summary>Readings of one session: the camera stands a little different each time, and no two swings are the same.</summary>
    public IReadOnlyList<double> Take(Measure measure, int swings)
    {
        var truth = Truth(measure) + _chance.Around(measure.SetupError);
        var (low, high) = (measure.Plausible.Low ?? double.MinValue, measure.Plausible.High ?? double.MaxValue);
        return [.. Enumerable.Range(0, swings).Select(_ => Math.Clamp(truth + _chance.Around(measure.SwingError), low, high))];
    }

    private double Step() => _body.Response switch
    {
        Response.Improves => 0.035,
        Response.ImprovesQuickly => 0.055,
        Response.ImprovesSlowly => 0.018,
        Response.Worsens => -0.022,
        Response.GoesThrough => 0.1,
        _ => 0,
    };

    private double Truth(Measure measure)
    {
        var range = HeldTo(measure)!;
        var step = Sized(measure, measure.Step ?? 1);
        var outside = (from way in _way
                       from fault in way.Key.Faults
                       where fault.Measure == measure.Id.Value
                       select (fault.Side, Beyond: Beyond(fault, way, range, step))).OrderByDescending(f => f.Beyond).ToList();
        if (outside is not [var worst, ..]) return Middle(measure, range, step);
        return worst.Side == Side.Low ? range.Low!.Value - (worst.Beyond * step) : range.High!.Value + (worst.Beyond * step);
    }

    // In steps outside the edge, negative inside; a consequence comes home with its root but never goes through.
    private double Beyond(SwingFault fault, KeyValuePair<SwingHabit, double> way, Limits range, double step)
    {
        var far = _body.Response == Response.GoesThrough && fault == way.Key.Faults[0];
        var done = far ? way.Value : Math.Min(way.Value, 1.15);
        var beyond = (fault.Steps * (1 - done)) - (Inside * done);
        var width = range is { Low: { } low, High: { } high } ? (high - low) / step : 4;
        return Math.Max(beyond, far ? -(width + FarOut) : -width / 2);
    }

    private double Middle(Measure measure, Limits range, double step)
    {
        if (_own.TryGetValue(measure.Id, out var known)) return known;
        var value = range switch
        {
            { Low: { } low, High: { } high } => ((low + high) / 2) + (_chance.Within(-0.12, 0.12) * (high - low)),
            { High: { } high } => high - (_chance.Within(1.8, 2.6) * step),
            _ => range.Low!.Value + (_chance.Within(1.2, 2) * step),
        };
        return _own[measure.Id] = value;
    }

    private Limits? HeldTo(Measure measure)
    {
        if (_book.RangeOf(measure.Id, _body.Club) is not { } range) return null;
        if (range.FromGoal) return _body.SpeedGoal is { } goal ? new Limits(goal, null) : null;
        return new Limits(range.Limits.Low is { } low ? Sized(measure, low) : null, range.Limits.High is { } high ? Sized(measure, high) : null);
    }

    private double Sized(Measure measure, double value) => measure.ScalesWithStature ? value * _body.HeightCm / Adult : value;
}
