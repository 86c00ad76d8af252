namespace CoachOffice.Domain.Media;

/// <summary>One picture, or moving pictures.</summary>
public enum MediaKind
{
    Still,
    Clip,
}
