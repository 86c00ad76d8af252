using System.Text;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.FollowUps;
using MimeKit;

namespace CoachOffice.UseCases.Tests.FollowUps;

public sealed class LettersTests
{
    // Words that press, blame or compare (own judgement after the literature on supporting autonomy); "must" and its kin never stand in our letters.
    internal static readonly string[] Pressing = ["must", "should", "have to", "ought", "disappoint", "fail", "others", "better than", "don't forget", "hurry", "only today", "missed", "lazy", "guilt"];

    /// <summary>Kinds that belong to a plan; all others are written by a family of their own.</summary>
    internal static readonly MessageKind[] OfPlans = [MessageKind.PlanDelivery, MessageKind.PracticeNudge, MessageKind.WeeklyCheckIn, MessageKind.RetestPrompt, MessageKind.SecondLook];

    public static TheoryData<MessageKind, bool, int> All()
    {
        var data = new TheoryData<MessageKind, bool, int>();
        foreach (var kind in OfPlans)
        {
            foreach (var guardian in (bool[])[true, false])
            {
                data.Add(kind, guardian, 0);
                data.Add(kind, guardian, 1);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_letter_asks_and_never_presses(MessageKind kind, bool guardian, int wording)
    {
        var letter = new Letters().Render(kind, Facts(guardian) with { Wording = wording });

        foreach (var word in Pressing) Assert.DoesNotContain(word, letter.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_letter_carries_the_cautions_the_way_out_and_the_same_words_in_both_forms(MessageKind kind, bool guardian, int wording)
    {
        var letter = new Letters().Render(kind, Facts(guardian) with { Wording = wording });

        Assert.Contains("Stop when something hurts", letter.Text, StringComparison.Ordinal);
        Assert.Contains("licensed professional", letter.Text, StringComparison.Ordinal);
        Assert.Contains("call 112", letter.Text, StringComparison.Ordinal);
        Assert.Contains("https://golf.example/stop/tok", letter.Text, StringComparison.Ordinal);
        Assert.Contains("https://golf.example/p/tok", letter.Text, StringComparison.Ordinal);
        Assert.Contains("<a href=\"https://golf.example/stop/tok\">", letter.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("{{", letter.Text + letter.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("\n\n\n", letter.Text, StringComparison.Ordinal);
        Assert.Equal(guardian, letter.Text.Contains("safeguarding", StringComparison.Ordinal));
    }

    [Fact]
    public void What_people_wrote_is_text_in_the_page_and_never_markup()
    {
        var letter = new Letters().Render(MessageKind.PlanDelivery, Facts(false) with { Message = ["<script>alert(1)</script> & more"], Greeting = "<b>Al</b>" });

        Assert.DoesNotContain("<script", letter.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", letter.Html, StringComparison.Ordinal);
        Assert.Contains("<script>alert(1)</script> & more", letter.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Al\r\nBcc: all@example.org")]
    [InlineData("Al\nSubject: x")]
    [InlineData("Al\u2028Bcc: x@example.org")]
    [InlineData("Al\u0000\u0085X: y")]
    [InlineData("\u202eAl")]
    public void A_name_never_adds_a_header(string name)
    {
        var letter = new Letters().Render(MessageKind.PlanDelivery, Facts(false) with { Student = CleanText.Line(name), Practice = CleanText.Line(name), Greeting = CleanText.Line(name) });
        var mail = MailForm.Of(letter, Outside() with { ToName = name, FromName = name });

        var written = Written(mail);

        var read = MimeMessage.Load(new MemoryStream(Encoding.UTF8.GetBytes(written)), TestContext.Current.CancellationToken);
        Assert.Empty(read.Bcc);
        Assert.Equal(["alma@example.org"], read.To.Mailboxes.Select(m => m.Address));
        Assert.Single(read.Headers, h => h.Id == HeaderId.Subject);
        Assert.DoesNotContain(read.Headers, h => h.Field is "X");
        Assert.DoesNotContain('\u202e', read.To.Mailboxes.Single().Name!);
    }

    [Theory]
    [InlineData("a@example.org\r\nBcc: all@example.org")]
    [InlineData("a@example.org, b@example.org")]
    [InlineData("a@example.org\n\nText")]
    [InlineData("\"a\r\nBcc: all@example.org\"@example.org")]
    public void An_address_never_adds_a_header_or_a_reader(string address)
    {
        try
        {
            var read = MimeMessage.Load(new MemoryStream(Encoding.UTF8.GetBytes(Written(MailForm.Of(new Letter("s", "t", "h"), Outside() with { ToAddress = address, FromAddress = address })))), TestContext.Current.CancellationToken);

            Assert.Empty(read.Bcc);
            Assert.Single(read.To.Mailboxes);
            Assert.DoesNotContain("all@example.org", read.To.Mailboxes.Select(m => m.Address));
        }
        catch (ParseException)
        {
            // Refused by the library: nothing goes out.
        }
    }

    /// <summary>RFC 5322 section 2.1.1: no line longer than 998 characters, whatever people wrote (from memory).</summary>
    [Fact]
    public void No_line_is_longer_than_a_server_has_to_take()
    {
        var (word, link) = (new string('x', 5_000), $"https://golf.example/stop/{new string('t', 300)}");
        var mail = MailForm.Of(new Letter(word, word, $"<p>{word}</p>"), Outside() with { ToName = word, FromName = word, StopLink = new Uri(link) });

        Assert.All(Written(mail).Split("\r\n"), line => Assert.InRange(line.Length, 0, 998));
    }

    /// <summary>RFC 3834 section 5 (auto-generated), RFC 5322 section 3.6.4 (identification; both from memory).</summary>
    [Fact]
    public void The_head_says_it_is_automatic_and_what_it_follows()
    {
        var mail = MailForm.Of(new Letter("s", "t", "h"), Outside() with { Follows = "plan-delivery.1@golf.example" });

        Assert.Equal("auto-generated", mail.Headers["Auto-Submitted"]);
        Assert.Equal(("retest-prompt.2@golf.example", "plan-delivery.1@golf.example"), (mail.MessageId, mail.InReplyTo));
        Assert.Equal(["plan-delivery.1@golf.example"], mail.References);
        Assert.All(Written(mail).Split("\r\n"), line => Assert.InRange(line.Length, 0, 998));
    }

    /// <summary>RFC 8058: one https address in List-Unsubscribe and the exact value in List-Unsubscribe-Post.</summary>
    [Fact]
    public void One_click_stopping_is_offered_where_the_address_allows_it()
    {
        var mail = MailForm.Of(new Letter("s", "t", "h"), Outside());
        var local = MailForm.Of(new Letter("s", "t", "h"), Outside() with { StopLink = new Uri("http://localhost:5180/stop/tok") });

        Assert.Equal("<https://golf.example/stop/tok>", mail.Headers[HeaderId.ListUnsubscribe]);
        Assert.Equal("List-Unsubscribe=One-Click", mail.Headers["List-Unsubscribe-Post"]);
        Assert.Equal("<http://localhost:5180/stop/tok>", local.Headers[HeaderId.ListUnsubscribe]);
        Assert.Null(local.Headers["List-Unsubscribe-Post"]);
    }

    private static string Written(MimeMessage mail)
    {
        using var bytes = new MemoryStream();
        mail.WriteTo(FormatOptions.Default.Clone() is { } format ? With(format) : FormatOptions.Default, bytes);
        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    private static FormatOptions With(FormatOptions format)
    {
        format.NewLineFormat = NewLineFormat.Dos;
        return format;
    }

    private static LetterFacts Facts(bool guardian) => new()
    {
        Greeting = "Alma",
        Student = "Alma",
        ForGuardian = guardian,
        Practice = "Harbour Road",
        Coach = "Carl Coach",
        EmergencyNumber = "112",
        Link = "https://golf.example/p/tok",
        StopLink = "https://golf.example/stop/tok",
        LessonOn = "Monday 2 March",
        LookOn = "Monday 9 March",
        Message = ["Well read today.", "See you."],
        IfThen = "If it is Tuesday after work, then I go to the net.",
        Reasons = ["The head runs ahead of the ball."],
        Drills = ["Head against the shade: 3 x 10, 3 times a week, about 10 minutes. Cue: keep the shadow where it was"],
        Measures = ["Head shift on the way down"],
        Cautions = ["Look around before each swing."],
    };

    private static Envelope Outside() => new()
    {
        MessageId = "retest-prompt.2@golf.example",
        FromName = "Harbour Road",
        FromAddress = "office@golf.example",
        ToName = "Alma",
        ToAddress = "alma@example.org",
        Date = new DateTimeOffset(2026, 3, 2, 9, 0, 0, TimeSpan.Zero),
        StopLink = new Uri("https://golf.example/stop/tok"),
    };
}
