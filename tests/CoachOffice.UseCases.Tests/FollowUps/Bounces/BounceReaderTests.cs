using System.Text;
using CoachOffice.UseCases.FollowUps.Bounces;
using MimeKit;

namespace CoachOffice.UseCases.Tests.FollowUps.Bounces;

/// <summary>
/// The recipient's part of the examples of RFC 3464 appendix D (looked up in public copies of the specification's text). The examples leave out the returned mail
/// ("[original message goes here]"); headers of one are put there, as without them nobody could tell whose mail came back.
/// </summary>
public sealed class BounceReaderTests
{
    // Appendix D.1: failed after five days, yet of class 4.
    private const string Simple = """
        Reporting-MTA: dns; cs.utk.edu

        Original-Recipient: rfc822;louisl@larry.slip.umd.edu
        Final-Recipient: rfc822;louisl@larry.slip.umd.edu
        Action: failed
        Status: 4.0.0
        Diagnostic-Code: smtp; 426 connection timed out
        Last-Attempt-Date: Thu, 7 Jul 1994 17:15:49 -0400
        """;

    // Appendix D.2: three recipients, one of them only delayed.
    private const string Several = """
        Reporting-MTA: dns; cs.utk.edu

        Original-Recipient: rfc822;arathib@vnet.ibm.com
        Final-Recipient: rfc822;arathib@vnet.ibm.com
        Action: failed
        Status: 5.0.0 (permanent failure)
        Diagnostic-Code: smtp;  550 'arathib@vnet.IBM.COM' is not a
         registered gateway user
        Remote-MTA: dns; vnet.ibm.com

        Original-Recipient: rfc822;johnh@hpnjld.njd.hp.com
        Final-Recipient: rfc822;johnh@hpnjld.njd.hp.com
        Action: delayed
        Status: 4.0.0 (hpnjld.njd.jp.com: host name lookup failure)

        Original-Recipient: rfc822;wsnell@sdcc13.ucsd.edu
        Final-Recipient: rfc822;wsnell@sdcc13.ucsd.edu
        Action: failed
        Status: 5.0.0
        Diagnostic-Code: smtp; 550 user unknown
        Remote-MTA: dns; sdcc13.ucsd.edu
        """;

    [Fact]
    public void The_simple_example() =>
        Assert.Equal([new BounceNotice("original@cs.utk.edu", "louisl@larry.slip.umd.edu", "4.0.0")], Read(Simple, "To: louisl@larry.slip.umd.edu"));

    [Fact]
    public void The_example_of_several_recipients() => Assert.Equal(
        [
            new BounceNotice("original@cs.utk.edu", "arathib@vnet.ibm.com", "5.0.0"),
            new BounceNotice("original@cs.utk.edu", "johnh@hpnjld.njd.hp.com", "4.0.0"),
            new BounceNotice("original@cs.utk.edu", "wsnell@sdcc13.ucsd.edu", "5.0.0"),
        ],
        Read(Several, "To: arathib@vnet.ibm.com, johnh@hpnjld.njd.hp.com"));

    // The returned part may be the headers alone (RFC 3462 section 2): text/rfc822-headers.
    [Theory]
    [InlineData("message/rfc822")]
    [InlineData("text/rfc822-headers")]
    public void The_address_written_to_counts_and_not_where_it_was_sent_on(string returned) =>
        Assert.Equal("ida@example.org", Assert.Single(Read("Reporting-MTA: dns; mx.example\n\nFinal-Recipient: rfc822; elsewhere@example.net\nAction: failed\nStatus: 5.1.1", "To: Ida <ida@example.org>", returned)).Address);

    [Theory]
    [InlineData("Reporting-MTA: dns; mx.example\n\nFinal-Recipient: rfc822; a@example.org\nAction: delivered\nStatus: 2.0.0")]
    [InlineData("Reporting-MTA: dns; mx.example\n\nFinal-Recipient: rfc822; a@example.org\nAction: failed\nStatus: five")]
    [InlineData("Reporting-MTA: dns; mx.example\n\nFinal-Recipient: rfc822; a@example.org\nAction: failed")]
    [InlineData("Reporting-MTA: dns; mx.example")]
    [InlineData("")]
    public void What_says_nothing_about_a_failure_is_passed_over(string status) => Assert.Empty(Read(status, "To: a@example.org"));

    [Fact]
    public void Ordinary_mail_and_a_notice_without_the_mail_that_came_back_are_passed_over()
    {
        Assert.Empty(BounceReader.Read(new MimeMessage()));
        Assert.Empty(BounceReader.Read(MimeMessage.Load(new MemoryStream(Encoding.ASCII.GetBytes("Subject: Failure notice\n\nStatus: 5.1.1 for ida@example.org\n")))));
        var mail = MimeMessage.Load(new MemoryStream(Notice(Simple, "To: a@example.org", "message/rfc822")));
        ((Multipart)mail.Body!).RemoveAt(2);
        Assert.Empty(BounceReader.Read(mail));
    }

    /// <summary>A whole notice.</summary>
    internal static byte[] Notice(string status, string to, string returned, string id = "original@cs.utk.edu") => Encoding.ASCII.GetBytes(
        "Date: Thu, 7 Jul 1994 17:16:05 -0400\nFrom: Mail Delivery Subsystem <MAILER-DAEMON@CS.UTK.EDU>\nMessage-Id: <199407072116.RAA14128@CS.UTK.EDU>\n"
        + "Subject: Returned mail: Cannot send message for 5 days\nTo: <owner-info-mime@cs.utk.edu>\nMIME-Version: 1.0\n"
        + "Content-Type: multipart/report; report-type=delivery-status;\n boundary=\"RAA14128.773615765/CS.UTK.EDU\"\n\n--RAA14128.773615765/CS.UTK.EDU\n\n"
        + "The original message was received at Sat, 2 Jul 1994 17:10:28 -0400\nfrom root@localhost\n\n--RAA14128.773615765/CS.UTK.EDU\ncontent-type: message/delivery-status\n\n"
        + status + $"\n\n--RAA14128.773615765/CS.UTK.EDU\ncontent-type: {returned}\n\n{to}\nMessage-ID: <{id}>\nSubject: what came back\n\n--RAA14128.773615765/CS.UTK.EDU--\n");

    private static IReadOnlyList<BounceNotice> Read(string status, string to, string returned = "message/rfc822") =>
        BounceReader.Read(MimeMessage.Load(new MemoryStream(Notice(status, to, returned))));
}
