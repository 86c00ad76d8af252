namespace CoachOffice.Domain.Measuring;

/// <summary>What a reading was taken with. <see cref="Eye"/> doubles the error.</summary>
public enum Instrument
{
    Video,
    Radar,
    PressureMat,
    FaceTape,
    TapeMeasure,
    Sensor,
    Eye,
}
