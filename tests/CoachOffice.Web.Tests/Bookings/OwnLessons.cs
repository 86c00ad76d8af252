namespace CoachOffice.Web.Tests.Bookings;

/// <summary>The way of a student through the pages of their own lessons.</summary>
internal static class OwnLessons
{
    /// <summary>The office makes a link; whoever gets it opens it in a browser of their own.</summary>
    public static async Task<Visitor> HandsOutLessons(this Visitor office, OfficeHost host, string student)
    {
        await office.Open($"{student}/lessons-link");
        await office.Send("form[action*='Make']");
        var visitor = new Visitor(host);
        await visitor.Open(new Uri(office.Page.QuerySelector("#address")!.GetAttribute("value")!).AbsolutePath);
        return visitor;
    }

    /// <summary>From the list of lessons to the times of the last day that is shown.</summary>
    public static async Task PicksADay(this Visitor student)
    {
        await student.Open(student.Page.QuerySelector("a.main[href^='/my-lessons/book']")!.GetAttribute("href")!);
        await student.Open(student.Page.QuerySelector("main ul.rows a")!.GetAttribute("href")!);
        await student.Open(student.Page.QuerySelectorAll(".day-list a")[^1].GetAttribute("href")!);
    }

    /// <summary>And to the first of them, which is kept.</summary>
    public static async Task PicksATime(this Visitor student)
    {
        await student.PicksADay();
        await student.Send("form:has(.time-list)", ("time", student.Page.QuerySelector(".time-list button")!.GetAttribute("value")));
    }

    /// <summary>And books it.</summary>
    public static async Task BooksALesson(this Visitor student)
    {
        await student.PicksATime();
        await student.Send("form[action*='Confirm']");
    }
}
