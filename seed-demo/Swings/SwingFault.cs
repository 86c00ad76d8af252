using CoachOffice.Domain.Measuring;

namespace CoachOffice.SeedDemo.Swings;

/// <summary>One number of a swing that lies outside.</summary>
/// <param name="Measure">Id of the measure.</param>
/// <param name="Side">Beyond which edge.</param>
/// <param name="Steps">By how many steps of severity.</param>
internal sealed record SwingFault(string Measure, Side Side, double Steps);
