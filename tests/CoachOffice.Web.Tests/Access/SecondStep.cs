namespace CoachOffice.Web.Tests.Access;

/// <summary>A person with an authenticator app.</summary>
internal static class SecondStep
{
    /// <summary>Sets the second step up; gives the key.</summary>
    public static async Task<byte[]> TurnsOnTheSecondStep(this Visitor person)
    {
        await person.Open("/account/second-factor");
        await person.Send("form[action*='Start']");
        Assert.StartsWith("data:image/svg+xml;base64,", person.Page.QuerySelector("img.qr")!.GetAttribute("src"), StringComparison.Ordinal);
        var key = TotpCode.Key(person.Page.QuerySelector("main code")!.TextContent);
        await person.Send("form[action*='Confirm']", ("Code", Code(key)));
        Assert.Contains("Keep these recovery codes", person.Text, StringComparison.Ordinal);
        return key;
    }

    /// <summary>What the app shows now, or some steps of 30 s later.</summary>
    public static string Code(byte[] key, int stepsAhead = 0) => TotpCode.Of(key, TimeProvider.System.GetUtcNow().ToUnixTimeSeconds() + 30 * stepsAhead, 6);
}
