namespace CoachOffice.Domain.Plans;

/// <summary>Life of a plan, as the request states of HL7 FHIR R5 (CarePlan.status).</summary>
public enum PlanStatus
{
    Draft,
    Active,
    OnHold,
    Completed,
    Revoked,
    EnteredInError,
}
