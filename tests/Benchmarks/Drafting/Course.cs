using System.Diagnostics;
using CoachOffice.Benchmarks.Measuring;
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

    /// <summary>Runs them in turn, once to warm up and then so many rounds.</summary>
    public static void ByTurns(IReadOnlyList<LessonFacts> lessons, int rounds, params Course[] courses)
    {
        foreach (var course in courses) course.Round(lessons);
        foreach (var course in courses) course.Clear();
        for (var round = 0; round < rounds; round++) foreach (var course in courses) course.Round(lessons);
    }

    public static Task Print(TextWriter output, params Course[] courses)
    {
        var table = new Table("a lesson", "microseconds", "KB allocated");
        foreach (var course in courses) table.Add(course.Name, new Sample(course.Micros).Text("0.0"), new Sample(course.Kilobytes).Text("0.0"));
        return table.Print(output);
    }
}
