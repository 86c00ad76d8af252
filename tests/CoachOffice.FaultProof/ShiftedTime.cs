namespace CoachOffice.FaultProof;

/// <summary>A clock that runs, began when it was told, and jumps when it is told.</summary>
public sealed class ShiftedTime(DateTimeOffset begin) : TimeProvider
{
    private readonly long _began = System.GetTimestamp();
    private long _jumped;

    public void Jump(TimeSpan by) => Interlocked.Add(ref _jumped, by.Ticks);

    public override DateTimeOffset GetUtcNow() => begin + System.GetElapsedTime(_began) + TimeSpan.FromTicks(Interlocked.Read(ref _jumped));
}
