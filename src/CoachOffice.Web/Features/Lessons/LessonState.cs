namespace CoachOffice.Web.Features.Lessons;

/// <summary>What a device needs before it sends what it kept.</summary>
/// <param name="Version">The lesson's version now.</param>
/// <param name="Account">Who is signed in now.</param>
/// <param name="Proof">A fresh proof against forged forms.</param>
internal sealed record LessonState(int Version, Guid Account, string Proof);
