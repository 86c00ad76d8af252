namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>A side of a picture as it is looked at.</summary>
public enum PictureSide
{
    Right,
    Left,
}
