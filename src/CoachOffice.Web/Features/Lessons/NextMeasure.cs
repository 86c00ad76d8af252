namespace CoachOffice.Web.Features.Lessons;

/// <summary>A measure that would tell more than any other now.</summary>
internal sealed record NextMeasure(string Key, string Name, string Because);
