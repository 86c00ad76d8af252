using Vogen;

namespace CoachOffice.Domain.Media;

/// <summary>Identity of a still or a clip.</summary>
[ValueObject<Guid>]
public readonly partial struct MediaId;
