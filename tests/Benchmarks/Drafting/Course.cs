using System.Diagnostics;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Benchmarks.Drafting;

/// <summary>One way of doing something to every lesson, timed round by round.</summary>
internal sealed class Course(string name, Action<LessonFacts> work)
{
    public string Name => name;

    /// <summary>Microseconds a lesson, one a round.</summary>
    public List<double> Micros { get; } = [];

    /// <summary>Kilobytes allocated a lesson, one a round.</summary>
    public List<double> Kilobytes { get; } = [];

    /// <summary>Forgets the rounds that only warmed up.</summary>
    public void Clear()
    {
        Micros.Clear();
        Kilobytes.Clear();
    }

    public void Round(IReadOnlyList<LessonFacts> lessons)
    {
        var bytes = GC.GetAllocatedBytesForCurrentThread();
        var from = Stopwatch.GetTimestamp();
        foreach (var lesson in lessons) work(lesson);
        Micros.Add(Stopwatch.GetElapsedTime(from).TotalMicroseconds / lessons.Count);
        Kilobytes.Add((GC.GetAllocatedBytesForCurrentThread() - bytes) / 1024.0 / lessons.Count);
    }
}
