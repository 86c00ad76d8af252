namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>A still with its marks, from a view at a moment.</summary>
/// <param name="View">From where it was taken.</param>
/// <param name="Moment">Of the swing.</param>
/// <param name="Marks">What is marked on it.</param>
public sealed record MarkedStill(View View, Moment Moment, StillMarks Marks)
{
    /// <summary>The same with one mark moved by so much.</summary>
    internal MarkedStill Moved(Landmark landmark, Pixel by) =>
        this with { Marks = Marks with { Marks = [.. Marks.Marks.Select(m => m.Landmark == landmark ? m with { At = m.At + by } : m)] } };
}
