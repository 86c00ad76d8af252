using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>A student's open links to their lessons.</summary>
/// <param name="Student">Full name.</param>
/// <param name="IsMinor">The link is the guardian's then.</param>
/// <param name="Open">How many are open, those in letters too.</param>
/// <param name="LastOpened">When one was last used.</param>
/// <param name="Zone">Of the practice.</param>
public sealed record VisitLinksView(string Student, bool IsMinor, int Open, Instant? LastOpened, DateTimeZone Zone);
