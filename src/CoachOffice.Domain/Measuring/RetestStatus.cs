namespace CoachOffice.Domain.Measuring;

/// <summary>Life of a re-test, as the task states of HL7 FHIR R5 (Task.status).</summary>
public enum RetestStatus
{
    Ready,
    InProgress,
    Completed,
    Failed,
    Cancelled,
}
