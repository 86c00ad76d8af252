using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Replay;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Counts results from several threads and keeps the newest few that differ, so that a practice's whole past takes no more memory than a page.</summary>
internal sealed class ReplayTally
{
    /// <summary>So many differing drafts are kept to be shown.</summary>
    public const int MostRows = 100;

    // Ids are ordered by time, so the greatest are the newest, whatever the order the threads come in.
    private readonly SortedDictionary<Guid, (StudentId Student, DraftDifference Difference)> _rows = [];
    private readonly Dictionary<CutOff, int> _cuts = [];
    private readonly Dictionary<DraftSection, int> _sections = [];
    private readonly Lock _gate = new();
    private int _gradedElse;
    private int _lessons;
    private int _reached;

    public void Found(int lessons, int reached)
    {
        lock (_gate) (_lessons, _reached) = (lessons, reached);
    }

    public void Add(LessonId lesson, StudentId student, ReplayResult result)
    {
        lock (_gate)
        {
            _cuts[result.CutOff] = _cuts.GetValueOrDefault(result.CutOff) + 1;
            if (result.IsGradedElse) _gradedElse++;
            if (result.Difference is not { } difference) return;
            foreach (var section in difference.Sections) _sections[section] = _sections.GetValueOrDefault(section) + 1;
            _rows.Add(lesson.Value, (student, difference));
            if (_rows.Count > MostRows) _rows.Remove(_rows.First().Key);
        }
    }

    public ReplayCounts Counts()
    {
        lock (_gate)
        {
            return new ReplayCounts
            {
                Lessons = _lessons,
                Reached = _reached,
                Followed = _cuts.Values.Sum(),
                GradedElse = _gradedElse,
                SameFindings = _cuts.GetValueOrDefault(CutOff.SameFindings),
                NotInTheWork = _cuts.GetValueOrDefault(CutOff.NotInTheWork),
                SameWork = _cuts.GetValueOrDefault(CutOff.SameWork),
                NoDraft = _cuts.GetValueOrDefault(CutOff.NoDraft),
                Differ = _cuts.GetValueOrDefault(CutOff.Differs),
                Sections = new Dictionary<DraftSection, int>(_sections),
            };
        }
    }

    /// <summary>Newest first.</summary>
    public IReadOnlyList<(LessonId Lesson, StudentId Student, DraftDifference Difference)> Rows()
    {
        lock (_gate) return [.. _rows.Reverse().Select(r => (LessonId.From(r.Key), r.Value.Student, r.Value.Difference))];
    }
}
