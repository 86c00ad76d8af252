namespace CoachOffice.SeedDemo.People;

/// <summary>What may happen to a student beside lessons and practice.</summary>
internal enum Happening
{
    Archive,
    Restore,
    Erase,
    LevelUp,
    FewerMinutes,
    NoteLimit,
    ClearLimit,
    Pause,
    Resume,
    Complete,
    Revoke,
    EnterInError,
    PassGate,
    ReportPain,
    ReportSign,
    SeePain,
    StopMessages,
    SkipMessage,
    HurryMessage,
    MoveMessage,
}

/// <summary>A happening on its day, counted back from the opening.</summary>
internal sealed record Dated(int DaysBefore, Happening What);
