namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>One swing of a file.</summary>
/// <param name="Line">Its line.</param>
/// <param name="Values">By the view's measures, in their own units; null was not measured.</param>
public sealed record DeviceSwing(int Line, IReadOnlyList<double?> Values);
