namespace CoachOffice.Domain.Measuring;

/// <summary>From where a measure is read.</summary>
public enum View
{
    FaceOn,
    DownTheLine,
    Either,
    Device,
}
