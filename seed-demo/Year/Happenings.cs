using CoachOffice.SeedDemo.People;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>Everything that happens beside lessons, re-tests and practice.</summary>
internal sealed class Happenings(Scene scene)
{
    private readonly StudentHappenings _student = new(scene);
    private readonly PlanHappenings _plan = new(scene);
    private readonly PainHappenings _pain = new(scene);
    private readonly MessageHappenings _message = new(scene);

    /// <summary>A plan that has been long enough in the student's hands ends.</summary>
    public Task WindUp(StudentLife life, CancellationToken stop) => life.Seat % 4 == 3 ? _plan.Revoke(life, stop) : _plan.Complete(life, stop);

    /// <summary>Lets one happen.</summary>
    public Task Let(Happening what, StudentLife life, LocalDate day, CancellationToken stop) => what switch
    {
        Happening.Archive => _student.Archive(life, stop),
        Happening.Restore => _student.Restore(life, stop),
        Happening.Erase => _student.Erase(life, stop),
        Happening.LevelUp => _student.LevelUp(life, stop),
        Happening.FewerMinutes => _student.FewerMinutes(life, stop),
        Happening.NoteLimit => _student.NoteLimit(life, day, stop),
        Happening.ClearLimit => _student.ClearLimit(life, stop),
        Happening.Pause => _plan.Pause(life, stop),
        Happening.Resume => _plan.Resume(life, day, stop),
        Happening.Complete => _plan.Complete(life, stop),
        Happening.Revoke => _plan.Revoke(life, stop),
        Happening.EnterInError => _plan.EnterInError(life, stop),
        Happening.PassGate => _plan.PassGate(life, stop),
        Happening.ReportPain => _pain.Report(life, [], stop),
        Happening.ReportSign => _pain.Report(life, [UseCases.Plans.EmergencySign.Numbness], stop),
        Happening.SeePain => _pain.See(life, stop),
        Happening.StopMessages => _message.StopAll(life, stop),
        Happening.SkipMessage => _message.Skip(life, stop),
        Happening.HurryMessage => _message.Hurry(life, stop),
        _ => _message.Move(life, day, stop),
    };
}
