using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>One value of a lesson as the draft page shows it: held against its band, with its error, its grade and why.</summary>
internal sealed record SeenLine
{
    public required DraftFinding Finding { get; init; }

    public required string Name { get; init; }

    public required Unit Unit { get; init; }

    public required View View { get; init; }

    public required Moment Moment { get; init; }

    /// <summary>"away from target" when the value is positive, "toward target" when negative.</summary>
    public required string Direction { get; init; }

    public Limits? Wanted { get; init; }

    public Limits? Aim { get; init; }

    /// <summary>Where the band comes from.</summary>
    public SourceMark? Source { get; init; }

    public required string HowTo { get; init; }

    public bool NeedsALook => Finding.Grade >= Grade.Borderline;
}
