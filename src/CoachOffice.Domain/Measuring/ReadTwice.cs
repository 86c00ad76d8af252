namespace CoachOffice.Domain.Measuring;

/// <summary>One measure read twice from the same take, in the measure's own unit.</summary>
/// <param name="Measure">What was read.</param>
/// <param name="Instrument">With what, both times.</param>
/// <param name="First">What stood in the lesson when it was read again.</param>
/// <param name="Second">What was read without sight of the first.</param>
public sealed record ReadTwice(MeasureId Measure, Instrument Instrument, double First, double Second);
