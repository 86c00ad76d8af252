using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Tests.Patterns;

/// <summary>A pattern in one line for a table of circumstances: conditions, then perhaps <c>needs</c>, <c>unless</c>, <c>only</c> a club; a bar between the ways of an any, <c>~</c> between measures out on the same side.</summary>
internal static class WrittenPattern
{
    public static Pattern Read(string text)
    {
        var parts = text.Replace(" needs ", "#n", StringComparison.Ordinal).Replace(" unless ", "#u", StringComparison.Ordinal).Replace(" only ", "#o", StringComparison.Ordinal).Split('#');
        string[] Of(char kind) => [.. parts.Skip(1).Where(p => p[0] == kind).SelectMany(p => p[1..].Split(", "))];
        return new Pattern
        {
            Id = PatternId.From("asked"),
            Name = "asked",
            Precedence = 10,
            Clubs = [.. Of('o').Select(Terms.Parse<Club>)],
            When = [.. parts[0].Split(", ").Select(Condition)],
            Needs = [.. Of('n').Select(MeasureId.From)],
            Unless = [.. Of('u').Select(Condition)],
            Root = [FaultId.Parse("a.high")],
            Explains = [],
            Because = "asked",
            Rationale = "asked",
            Source = SourceMark.CommonPractice,
        };
    }

    private static Condition Condition(string text)
    {
        if (text.Contains('|', StringComparison.Ordinal)) return new AnyOfCondition([.. text.Split(" | ").Select(Condition)]);
        if (text.Contains('~', StringComparison.Ordinal)) return new SameSideCondition([.. text.Split('~').Select(MeasureId.From)]);
        return text.Split(' ') switch
        {
            ["pattern", var id] => new FiredCondition(PatternId.From(id)),
            ["others", var count] => new OthersInRangeCondition(Number(count)),
            [var m, "below", var bound] => new ValueCondition(MeasureId.From(m), Side.Low, Number(bound)),
            [var m, "above", var bound] => new ValueCondition(MeasureId.From(m), Side.High, Number(bound)),
            [var m, "read", var count] => new ReadingsCondition(MeasureId.From(m), Number(count)),
            [var m, "in"] => new StateCondition(MeasureId.From(m), MeasureState.InRange),
            [var m, "off"] => new StateCondition(MeasureId.From(m), MeasureState.NotInRange),
            [var m, "known"] => new StateCondition(MeasureId.From(m), MeasureState.Measured),
            [var m, "unknown"] => new StateCondition(MeasureId.From(m), MeasureState.NotMeasured),
            [var fault, var least] => Out(fault, Terms.Parse<Grade>(least)),
            [var fault] => Out(fault, Grade.Mild),
            _ => throw new FormatException(text),
        };
    }

    private static OutCondition Out(string fault, Grade least) =>
        fault.Split('.') is [var m, "out"] ? new(MeasureId.From(m), Side.None, least) : new(FaultId.Parse(fault).Measure, FaultId.Parse(fault).Side, least);

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
