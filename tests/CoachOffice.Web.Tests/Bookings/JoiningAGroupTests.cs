using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.Web.Tests.Bookings;

/// <summary>A lesson the practice sets a time for: students take a place in it, or wait for one.</summary>
public sealed class JoiningAGroupTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync()
    {
        _owner = await _office.OpensThePractice();
        await _owner.AddsPlace("Range");
        await _owner.AddsOffering("Short game group", "20.00", ("Input.Kind", "group"), ("Input.Capacity", "2"));
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task The_last_place_is_taken_and_the_next_in_line_gets_it_when_it_is_given_up()
    {
        var anna = await _owner.Registers("Anna", "Berg");
        await Plans(anna);
        var ida = await _owner.HandsOutLessons(_office, await _owner.Registers());
        var ben = await _owner.HandsOutLessons(_office, await _owner.Registers("Ben", "Okafor"));

        await Looks(ida);
        Assert.DoesNotContain("Anna", ida.Text, StringComparison.Ordinal);
        await ida.Send("form[action*='Join']");
        await ida.Send("form[action*='Confirm']");
        Assert.Null(ida.Page.QuerySelector("a[href$='/move']"));
        var lesson = ida.Path;
        await Looks(ida);
        Assert.Contains("you are in it", ida.Text, StringComparison.Ordinal);

        await Looks(ben);
        Assert.Contains("full", ben.Text, StringComparison.Ordinal);
        await ben.Send("form[action*='Wait']");
        Assert.Contains("a place on", ben.Text, StringComparison.Ordinal);
        await ida.Open(lesson);
        await ida.Send("form[action*='Cancel']");

        await ben.Open("/my-lessons");
        Assert.Contains("A place became free", ben.Text, StringComparison.Ordinal);
        await ben.Send("form[action*='Confirm']");
        Assert.Contains("Booked.", ben.Text, StringComparison.Ordinal);
        await ben.Open("/my-lessons");
        Assert.DoesNotContain("You wait for", ben.Text, StringComparison.Ordinal);
    }

    private static async Task Looks(Visitor student)
    {
        await student.Open("/my-lessons/book");
        await student.Open(student.Page.QuerySelector("main ul.rows a")!.GetAttribute("href")!);
    }

    /// <summary>A group in four days with one place taken.</summary>
    private async Task Plans(string student)
    {
        await using var scope = _office.Services.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<Data.OfficeDb>();
        var offering = await db.Offerings.SingleAsync(TestContext.Current.CancellationToken);
        var day = scope.ServiceProvider.GetRequiredService<IClock>().GetCurrentInstant().InUtc().Date.PlusDays(4);
        var form = new BookingForm
        {
            OfferingId = offering.Id,
            CoachId = offering.Coaches[0],
            PlaceId = offering.Places[0],
            Start = day.At(new LocalTime(10, 0)),
            Students = [StudentId.From(Guid.Parse(student.Split('/')[^1]))],
        };
        Assert.True((await scope.ServiceProvider.GetRequiredService<BookLesson>().As(form, new Actor(offering.Coaches[0], Owner.Name, Policy.Owner), TestContext.Current.CancellationToken)).Succeeded);
    }
}
