namespace CoachOffice.Domain.Plans;

/// <summary>A sentence of safety or doubt that goes out with a plan. It never diagnoses.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Occasion">When it is shown.</param>
/// <param name="Text">For the student; <c>{0}</c> stands for what it concerns where the occasion has one.</param>
public sealed record Caution(CautionId Id, CautionOccasion Occasion, string Text);
