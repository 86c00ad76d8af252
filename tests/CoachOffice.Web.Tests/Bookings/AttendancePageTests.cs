using System.Net;

namespace CoachOffice.Web.Tests.Bookings;

public sealed class AttendancePageTests : IDisposable
{
    private readonly OfficeHost _office = new();

    public void Dispose() => _office.Dispose();

    [Fact]
    public async Task Who_teaches_finds_it_from_the_calendar_and_the_desk_does_not()
    {
        var owner = await _office.OpensThePractice();
        await owner.Open("/calendar");
        Assert.NotNull(owner.Page.QuerySelector("a[href='/calendar/attendance']"));

        await owner.Open("/calendar/attendance");

        Assert.Equal(HttpStatusCode.OK, owner.Status);
        Assert.Contains("No lesson of this year is marked yet", owner.Text, StringComparison.Ordinal);
        var desk = await owner.LetsIn(_office, "desk");
        await desk.Open("/calendar");
        Assert.Null(desk.Page.QuerySelector("a[href='/calendar/attendance']"));
        await desk.Open("/calendar/attendance");
        Assert.Equal(HttpStatusCode.Forbidden, desk.Status);
    }
}
