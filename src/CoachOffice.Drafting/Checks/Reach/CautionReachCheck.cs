using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Checks.Reach;

/// <summary>Cautions whose occasion never comes with this book.</summary>
internal sealed class CautionReachCheck : ICheck
{
    public IEnumerable<Anomaly> Of(RuleBase rules) =>
        rules.Book.Cautions.Where(c => !CanCome(rules.Book, c)).Select(caution => new Anomaly
        {
            Kind = AnomalyKind.Unreachable,
            Severity = AnomalySeverity.Warn,
            Entries = [rules.Place("cautions", caution.Id.Value)],
            Sentence = caution.Occasion == CautionOccasion.Drill
                ? "no drill that is offered names it, so it is never said; name it there or take it out"
                : $"its occasion '{Terms.Of(caution.Occasion)}' cannot come with the measures and drills of this book",
        });

    private static bool CanCome(Rulebook book, Caution caution) => caution.Occasion switch
    {
        CautionOccasion.Drill => Offered(book).Any(d => d.Cautions.Contains(caution.Id)),
        CautionOccasion.SwingingClub => Offered(book).Any(d => d.Club != DrillClub.None),
        CautionOccasion.FullSpeed => book.Progressions.SelectMany(p => p.Rungs).Any(r => r.Stage >= Stage.Full),
        CautionOccasion.DeviceDoubtful => book.Measures.Any(m => m.Doubtful is not null),
        CautionOccasion.HeightNeeded => book.Measures.Any(m => m.ScalesWithStature && book.Ranges.Any(r => r.Measure == m.Id)),
        CautionOccasion.SlowVideo => book.Measures.Any(m => m.NeedsFastVideo),
        CautionOccasion.ReadingsDisagree => TiltConsistency.Compared.All(id => book.Find(id) is not null),
        _ => true,
    };

    private static IEnumerable<Drill> Offered(Rulebook book) => book.Progressions.SelectMany(p => p.Rungs).SelectMany(r => r.Drills).Distinct().Select(id => book.Find(id)!);
}
