namespace CoachOffice.Domain.Measuring;

/// <summary>The range and step a value is held against for one student: after stature, age and the student's own goal; in the measure's unit.</summary>
/// <param name="Limits">The edges, or null when nothing is wanted of this measure with this club.</param>
/// <param name="Step">One step of severity; present whenever there are limits.</param>
/// <param name="FromGoal">True when the low edge is the student's own goal.</param>
public sealed record HeldRange(Limits? Limits, double? Step, bool FromGoal);
