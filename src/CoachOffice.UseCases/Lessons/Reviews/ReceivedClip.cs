using CoachOffice.Data.Media;
using CoachOffice.Domain.Media;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>A clip that arrived and was recognised, not kept yet.</summary>
public sealed record ReceivedClip(ReceivedContent Content, MediaFormat Format);
