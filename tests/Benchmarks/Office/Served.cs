using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.Benchmarks.Office;

/// <summary>A student who had a lesson and a draft made from it.</summary>
internal sealed record Served(StudentId Student, LessonId Lesson, PlanId Plan);
