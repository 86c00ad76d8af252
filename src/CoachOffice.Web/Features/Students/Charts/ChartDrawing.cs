using System.Globalization;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Insight;
using CoachOffice.Web.Shell.Wording;
using NodaTime;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace CoachOffice.Web.Features.Students.Charts;

/// <summary>A measure over time as a drawing: the wanted band, every value with a whisker of two standard errors, lessons and re-tests marked apart, the times a plan worked on it, and the trend once there is one.</summary>
internal sealed class ChartDrawing(MeasureHistory history, UnitText units, bool isSmall)
{
    /// <summary>Counted up whenever the same measures are drawn otherwise, so that no browser keeps an old drawing.</summary>
    public const int Edition = 1;

    // Colours of tokens.css on its light sheet: an image cannot read them.
    private static readonly OxyColor Sheet = OxyColor.FromRgb(0xff, 0xfd, 0xf9);
    private static readonly OxyColor Ink = OxyColor.FromRgb(0x23, 0x21, 0x1d);
    private static readonly OxyColor InkSoft = OxyColor.FromRgb(0x5b, 0x56, 0x4c);
    private static readonly OxyColor Rule = OxyColor.FromRgb(0xd6, 0xcf, 0xc0);
    private static readonly OxyColor Accent = OxyColor.FromRgb(0x14, 0x56, 0x6b);
    private static readonly OxyColor AccentWash = OxyColor.FromAColor(120, OxyColor.FromRgb(0xe1, 0xee, 0xf1));
    private static readonly OxyColor Good = OxyColor.FromRgb(0x23, 0x60, 0x3a);
    private static readonly OxyColor GoodWash = OxyColor.FromRgb(0xe6, 0xf1, 0xe6);

    // A band without an end on one side is drawn to the edge of the picture.
    private readonly double _low = Lowest(history, units);
    private readonly double _high = Highest(history, units);

    /// <summary>The drawing as an SVG file.</summary>
    public string Svg() => Exporter(isSmall).ExportToString(Plot());

    /// <summary>Writes a plot as a file of the size the pages show.</summary>
    internal static OxyPlot.SvgExporter Exporter(bool isSmall) => new() { Width = isSmall ? 360 : 760, Height = isSmall ? 220 : 380, UseVerticalTextAlignmentWorkaround = true };

    /// <summary>What is drawn.</summary>
    internal PlotModel Plot()
    {
        var model = new PlotModel
        {
            Background = Sheet,
            TextColor = Ink,
            PlotAreaBorderColor = Rule,
            DefaultFont = "sans-serif",
            DefaultFontSize = isSmall ? 11 : 13,
            Culture = CultureInfo.InvariantCulture,
        };
        AddAxes(model);
        AddBand(model);
        foreach (var worked in history.Work) AddWork(model, worked);
        if (history.Trend is { } trend) AddTrend(model, trend);
        AddPoints(model, LessonKind.Lesson, MarkerType.Circle, Accent);
        AddPoints(model, LessonKind.Retest, MarkerType.Diamond, Good);
        AddVerdicts(model);
        return model;
    }

    private void AddAxes(PlotModel model)
    {
        var (from, until) = (DateOf(history.Points[0].On), DateOf(history.Points[^1].On));
        var room = Math.Max(14, (until - from) * 0.05);
        model.Axes.Add(new DateTimeAxis
        {
            Position = AxisPosition.Bottom,
            Minimum = from - room,
            Maximum = until + room,
            StringFormat = "d MMM yy",
            MajorStep = Math.Max(1, Math.Round((until - from + (2 * room)) / (isSmall ? 3 : 6))),
            MinorTickSize = 0,
            TicklineColor = Rule,
            AxislineColor = Rule,
        });
        model.Axes.Add(new LinearAxis
        {
            Position = AxisPosition.Left,
            Minimum = _low,
            Maximum = _high,
            Unit = units.Symbol(history.Measure.Unit),
            AxisTitleDistance = 10,
            MinorTickSize = 0,
            MajorGridlineStyle = LineStyle.Solid,
            MajorGridlineColor = Rule,
            TicklineColor = Rule,
        });
    }

    private void AddBand(PlotModel model)
    {
        if (history.Wanted is not { } wanted) return;
        model.Annotations.Add(new RectangleAnnotation
        {
            MinimumY = wanted.Low is { } low ? Shown(low) : _low,
            MaximumY = wanted.High is { } high ? Shown(high) : _high,
            Fill = GoodWash,
            Stroke = OxyColor.FromAColor(120, Good),
            StrokeThickness = 1,
            Layer = AnnotationLayer.BelowSeries,
            Text = isSmall ? null : "wanted",
            TextColor = InkSoft,
            TextHorizontalAlignment = OxyPlot.HorizontalAlignment.Left,
            TextVerticalAlignment = OxyPlot.VerticalAlignment.Top,
        });
    }

    private void AddWork(PlotModel model, WorkedOn worked) =>
        model.Annotations.Add(new RectangleAnnotation
        {
            MinimumX = DateOf(worked.From),
            MaximumX = worked.Until is { } end ? DateOf(end) : double.MaxValue,
            Fill = AccentWash,
            Layer = AnnotationLayer.BelowSeries,
        });

    private void AddTrend(PlotModel model, Trend trend)
    {
        var slope = Shown(trend.SlopePerDay) - Shown(0);
        var epoch = DateOf(new LocalDate(1970, 1, 1));
        model.Annotations.Add(new LineAnnotation
        {
            Type = LineAnnotationType.LinearEquation,
            Slope = slope,
            Intercept = Shown(trend.Middle.Value) - (slope * (trend.Middle.Day + epoch)),
            Color = InkSoft,
            LineStyle = LineStyle.Dash,
        });
    }

    private void AddPoints(PlotModel model, LessonKind kind, MarkerType marker, OxyColor colour)
    {
        var points = history.Points.Where(p => p.Kind == kind).ToList();
        if (points.Count == 0) return;
        var series = new ScatterErrorSeries
        {
            MarkerType = marker,
            MarkerSize = isSmall ? 4 : 5,
            MarkerFill = colour,
            ErrorBarColor = colour,
            ErrorBarStopWidth = 4,
        };

        // The library draws half of what it is given to each side.
        series.Points.AddRange(points.Select(p => new ScatterErrorPoint(DateOf(p.On), Shown(p.Value), 0, 4 * Scale(p.StandardError))));
        model.Series.Add(series);
    }

    /// <summary>A sign above the whisker of each re-test that was judged.</summary>
    private void AddVerdicts(PlotModel model)
    {
        foreach (var point in history.Points.Where(p => p.Verdict is not null))
        {
            model.Annotations.Add(new TextAnnotation
            {
                Text = ChartWords.Sign(point.Verdict!.Movement),
                TextPosition = new DataPoint(DateOf(point.On), Shown(point.Value + (2 * point.StandardError))),
                TextColor = Ink,
                StrokeThickness = 0,
                FontWeight = FontWeights.Bold,
                TextHorizontalAlignment = OxyPlot.HorizontalAlignment.Center,
                TextVerticalAlignment = OxyPlot.VerticalAlignment.Bottom,
            });
        }
    }

    private double Shown(double value) => Shown(value, history, units);

    private double Scale(double width) => Math.Abs(Shown(width) - Shown(0));

    private static double Shown(double value, MeasureHistory history, UnitText units) =>
        new Quantity(value, history.Measure.Unit).In(units.ShownIn(history.Measure.Unit)).Value;

    private static double DateOf(LocalDate day) => DateTimeAxis.ToDouble(day.ToDateTimeUnspecified());

    private static double Lowest(MeasureHistory history, UnitText units) => Edge(history, units, Math.Min, -1);

    private static double Highest(MeasureHistory history, UnitText units) => Edge(history, units, Math.Max, 1);

    private static double Edge(MeasureHistory history, UnitText units, Func<double, double, double> further, int sign)
    {
        double[] ends = [.. history.Points.SelectMany(p => new[] { p.Value - (2 * p.StandardError), p.Value + (2 * p.StandardError) }), .. new[] { history.Wanted?.Low, history.Wanted?.High }.OfType<double>()];
        var room = Math.Max((ends.Max() - ends.Min()) * 0.08, 1e-6);
        return Shown(ends.Aggregate(further) + (sign * room), history, units);
    }
}
