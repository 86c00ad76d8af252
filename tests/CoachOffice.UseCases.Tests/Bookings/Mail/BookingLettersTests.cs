using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Bookings.Mail;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Tests.FollowUps;

namespace CoachOffice.UseCases.Tests.Bookings.Mail;

public sealed class BookingLettersTests
{
    public static TheoryData<MessageKind, bool, int> All()
    {
        var data = new TheoryData<MessageKind, bool, int>();
        foreach (var kind in (MessageKind[])[MessageKind.BookingInvitation, MessageKind.BookingCancelled, MessageKind.WaitingOffer])
        {
            foreach (var guardian in (bool[])[true, false])
            {
                data.Add(kind, guardian, 1);
                data.Add(kind, guardian, 3);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_letter_says_what_is_and_never_presses(MessageKind kind, bool guardian, int count)
    {
        var letter = new Letters().Render(kind, Facts(guardian, count));

        foreach (var word in LettersTests.Pressing) Assert.DoesNotContain(word, letter.Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain('!', letter.Text);
        Assert.DoesNotContain("{{", letter.Text + letter.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("\n\n\n", letter.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("stop", letter.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void It_names_time_place_coach_and_the_way_to_change_it(MessageKind kind, bool guardian, int count)
    {
        var letter = new Letters().Render(kind, Facts(guardian, count));

        Assert.Contains("- Monday 30 March 2026, 09:00 to 10:00 (Europe/London)\n", letter.Text, StringComparison.Ordinal);
        Assert.Contains("- Golf hour with Carl Coach\n- Harbour Road range, Bay 1\n", letter.Text, StringComparison.Ordinal);
        Assert.Contains("<a href=\"https://golf.example/v/tok\">", letter.Html, StringComparison.Ordinal);
        Assert.Contains("keep it to yourself", letter.Text, StringComparison.Ordinal);
        Assert.Equal(guardian, letter.Text.Contains("Kit", StringComparison.Ordinal));
        Assert.Equal(count > 1 && kind != MessageKind.WaitingOffer, letter.Subject.Contains($"and {count - 1} more", StringComparison.Ordinal));
    }

    [Fact]
    public void What_people_wrote_is_text_in_the_page_and_never_markup()
    {
        var letter = new Letters().Render(MessageKind.BookingInvitation, Facts(false, 1) with { What = "<b>Golf</b>", Where = "<img src=x>" });

        Assert.DoesNotContain("<b>", letter.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("<img", letter.Html, StringComparison.Ordinal);
    }

    private static BookingLetterFacts Facts(bool guardian, int count) => new()
    {
        Greeting = guardian ? "Mara Marsh" : "Alma",
        Student = guardian ? "Kit" : "Alma",
        ForGuardian = guardian,
        OpensLessons = true,
        Practice = "Harbour Road",
        What = "Golf hour",
        When = [.. Enumerable.Range(0, count).Select(n => $"Monday {30 - n} March 2026, 09:00 to 10:00 (Europe/London)")],
        Count = count,
        Coach = "Carl Coach",
        Where = "Harbour Road range, Bay 1",
        Price = "GBP 45.00",
        Terms = "Cancelling or moving is free until Sunday 29 March 2026, 09:00 (Europe/London); after that GBP 22.50 is owed (50 % of the price).",
        Link = "https://golf.example/v/tok",
        Until = "Monday 2 March 2026, 11:00 (Europe/London)",
    };
}
