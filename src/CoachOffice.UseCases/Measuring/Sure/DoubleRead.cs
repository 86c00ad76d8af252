using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Measuring.Sure;

/// <summary>One measure of one take read twice.</summary>
/// <param name="Double">Both values.</param>
/// <param name="IsSameReader">By the same coach.</param>
internal sealed record DoubleRead(ReadTwice Double, bool IsSameReader);
