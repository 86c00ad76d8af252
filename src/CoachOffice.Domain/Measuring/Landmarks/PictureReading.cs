namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>A measure as the marks give it, with what can be wrong about it; or what is missing for it.</summary>
/// <param name="Measure">Which.</param>
/// <param name="Value">The value, or null while something is missing.</param>
/// <param name="Click">Standard error of the value when every mark was clicked with a standard error of <see cref="PictureReadings.ClickPixels"/> across and down.</param>
/// <param name="Camera">How far the stated angle off square can move it.</param>
/// <param name="Missing">What is missing; empty when there is a value.</param>
public sealed record PictureReading(PictureMeasure Measure, Quantity? Value, Quantity? Click, Quantity? Camera, IReadOnlyList<MissingMark> Missing);
