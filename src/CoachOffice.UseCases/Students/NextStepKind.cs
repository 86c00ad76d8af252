namespace CoachOffice.UseCases.Students;

/// <summary>What is to be done with a student next, the most urgent first.</summary>
public enum NextStepKind
{
    SeePainReport,
    ApproveDraft,
    TakeRetest,
    ResumePlan,
    AwaitRetest,
    DraftFromLesson,
    RecordLesson,
}
