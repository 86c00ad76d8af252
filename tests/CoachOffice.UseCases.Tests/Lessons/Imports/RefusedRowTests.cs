using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.UseCases.Lessons.Imports;
using CoachOffice.UseCases.Tests.Fixtures;

namespace CoachOffice.UseCases.Tests.Lessons.Imports;

/// <summary>Rows that are no swing, each with its line and a sentence that says the limit.</summary>
public sealed class RefusedRowTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    [Theory]
    [InlineData("2026-02-20,Driver,172,240,2,1,1,1", "outside-limits", "172 mph, which is 76.9 m/s, is outside what can be, 8 to 70 m/s")]
    [InlineData("2026-02-20,Driver,98,260,2,1,1,1", "outside-limits", "8 to 100 m/s")]
    [InlineData("2026-02-20,Driver,90,141,2,1,1,1", "outside-limits", "would be 1.57, outside what can be, 0.6 to 1.56")]
    [InlineData("2026-02-20,Driver,98,140,25,1,1,1", "outside-limits", "-20 to 20 deg")]
    [InlineData("2026-02-20,Driver,98,140,2,\"1,234\",1,1", "outside-limits", "-30 to 30 deg")]
    [InlineData("2026-02-20,Driver,98,140,2,31,1,1", "outside-limits", "-30 to 30 deg")]
    [InlineData("2026-02-20,Driver,98,140,2,1,41,1", "outside-limits", "-40 to 40 deg")]
    [InlineData("2026-02-20,Driver,NaN,140,2,1,1,1", "not-a-number", "'NaN' is no number")]
    [InlineData("2026-02-20,Driver,Infinity,140,2,1,1,1", "not-a-number", "'Infinity'")]
    [InlineData("2026-02-20,Driver,=1+97,140,2,1,1,1", "not-a-number", "'=1+97' is no number")]
    [InlineData("2026-02-20,Driver,1e2,140,2,1,1,1", "not-a-number", "'1e2'")]
    [InlineData("2026-02-20,Driver,98,\"14,5\",2,1,1,1", "not-a-number", "decimal point")]
    [InlineData("2026-02-20,Driver,98,140,2,1,1", "ragged", "7 cells under 8 names")]
    [InlineData("2026-02-20,Driver,98,4,140,2,1,1,1,3", "ragged", "does a comma inside a number set it apart?")]
    [InlineData("2026-02-20,Driver,98,\"140,2,1,1,1", "quotes", "never closed")]
    [InlineData("2026-02-30,Driver,98,140,2,1,1,1", "day", "'2026-02-30' is no day")]
    [InlineData("soon,Driver,98,140,2,1,1,1", "day", "'soon' is no day")]
    [InlineData("2026-03-03,Driver,98,140,2,1,1,1", "day-far", "after today")]
    [InlineData("2005-03-03,Driver,98,140,2,1,1,1", "day-far", "20 years")]
    [InlineData("2026-02-20,,98,140,2,1,1,1", "club", "names no club")]
    [InlineData("2026-02-20,Driver,,-,--,,,", "nothing", "Nothing was measured")]
    public async Task A_row_that_cannot_be_is_refused_with_its_reason(string row, string code, string says)
    {
        var coach = await Bringing.For(fixture.Office);
        var view = await coach.Looks(await coach.BringsTold(Bringing.Head + Bringing.Swing + row + "\n" + Bringing.Swing));

        var refused = Assert.Single(view.Would.Refused);
        Assert.Equal((3, code), (refused.Line, refused.Code));
        Assert.Contains(says, refused.Sentence, StringComparison.Ordinal);
        Assert.Equal((2, 1), (view.Would.Swings, view.Would.RefusedRows));
    }

    [Theory]
    [InlineData("2026-02-20,Driver,100,150,2,1,1,1.7", null)]
    [InlineData("2026-02-20,Driver,100,152,2,1,1,1.7", "device-error")]
    [InlineData("2026-02-20,Driver,100,155.9,2,1,1,1.7", "device-error")]
    [InlineData("2026-02-20,Driver,100,145,2,-6,10,1.2", null)]
    [InlineData("2026-02-20,Driver,100,145,2,-6,10,6", "start-direction")]
    [InlineData("2026-02-20,Driver,100,145,2,-6,10,-5", "start-direction")]
    public async Task What_is_odd_is_kept_and_flagged(string row, string? code)
    {
        var coach = await Bringing.For(fixture.Office);
        var view = await coach.Looks(await coach.BringsTold(Bringing.Head + row + "\n"));

        Assert.Equal(1, view.Would.Swings);
        Assert.Equal(code, view.Would.Doubted.SingleOrDefault()?.Code);
    }

    [Fact]
    public async Task Swings_of_clubs_left_out_and_beyond_what_a_lesson_holds_are_refused()
    {
        var coach = await Bringing.For(fixture.Office);
        var many = string.Concat(Enumerable.Repeat(Bringing.Swing, 501));
        var view = await coach.Looks(await coach.BringsTold(Bringing.Head + many + Bringing.Swing.Replace("Driver", "Putter", StringComparison.Ordinal)));

        Assert.Equal((500, 2), (view.Would.Swings, view.Would.RefusedRows));
        Assert.Equal((1, 1), (view.Reasons["too-many"], view.Reasons["club"]));
    }

    [Fact]
    public async Task An_unclosed_quote_costs_one_row_and_blank_rows_and_trailing_separators_none()
    {
        var coach = await Bringing.For(fixture.Office);
        var view = await coach.Looks(await coach.BringsTold(Bringing.Head + "\n,,,,,,,\n" + Bringing.Swing.TrimEnd() + ",\n" + "\"2026-02-20,Driver,98,140,2,1,1,1\n" + Bringing.Swing + "\n"));

        Assert.Equal((2, 1), (view.Would.Swings, view.Would.RefusedRows));
        Assert.Equal(5, view.Would.Refused.Single().Line);
    }

    [Fact]
    public async Task The_preview_grades_a_day_and_club_as_the_lesson_would_be()
    {
        var coach = await Bringing.For(fixture.Office);
        var view = await coach.Looks(await coach.BringsTold(Bringing.Head + string.Concat(Enumerable.Repeat("2026-02-20,Driver,98,140,-7,-9,6,-5\n", 6))));

        var group = Assert.Single(view.Groups);
        var attack = group.Findings.Single(f => f.Measure.Id.Value == "attack-angle");
        Assert.Equal((6, -7d, Domain.Measuring.Side.Low), (attack.Readings, attack.Value.Value, attack.Side));
        Assert.True(attack.IsOut);
        Assert.Contains(group.Findings, f => f.Measure.Id.Value == "smash-factor" && f.IsDerived);
        Assert.Equal(6, view.FirstSwings.Count);
    }
}
