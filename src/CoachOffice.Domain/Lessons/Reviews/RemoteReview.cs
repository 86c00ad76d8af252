using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Lessons.Reviews;

/// <summary>Clips a student sent in from far away, and the answer promised for them.</summary>
public sealed class RemoteReview
{
    /// <summary>Clips of one review at most.</summary>
    public const int MostClips = 8;

    private readonly List<ReviewClip> _clips = [];

    private RemoteReview()
    {
    }

    public ReviewId Id { get; private set; }

    public StudentId StudentId { get; private set; }

    public OfferingId OfferingId { get; private set; }

    /// <summary>Who answers it; null while nobody opened it and several could.</summary>
    public AccountId? CoachId { get; private set; }

    public Instant SubmittedAt { get; private set; }

    /// <summary>The answer is promised by then.</summary>
    public Instant PromisedBy { get; private set; }

    /// <summary>IANA zone of the student, in which the promise was told.</summary>
    public string Zone { get; private set; } = "";

    public Club Club { get; private set; }

    public string BallFlight { get; private set; } = "";

    public string Felt { get; private set; } = "";

    public string Numbers { get; private set; } = "";

    /// <summary>As offered when it came in, in the smallest unit of the practice's currency.</summary>
    public long PriceMinor { get; private set; }

    /// <summary>Rate of tax then, in hundredths of a percent.</summary>
    public int TaxBasisPoints { get; private set; }

    public ReviewStatus Status { get; private set; }

    /// <summary>The lesson record made of it.</summary>
    public LessonId? LessonId { get; private set; }

    /// <summary>When it was answered or taken back.</summary>
    public Instant? EndedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    public IReadOnlyList<ReviewClip> Clips => _clips;

    /// <summary>True while an answer is owed.</summary>
    public bool IsOpen => Status is ReviewStatus.Received or ReviewStatus.Opened;

    /// <summary>A review that came in; the promise counts from then.</summary>
    public static RemoteReview Submit(ReviewId id, StudentId student, Offering offering, ReviewWords words, ReviewMoment moment)
    {
        ArgumentNullException.ThrowIfNull(offering);
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(moment);
        return new RemoteReview
        {
            Id = id,
            StudentId = student,
            OfferingId = offering.Id,
            CoachId = offering.Coaches is [var only] ? only : null,
            SubmittedAt = moment.Now,
            PromisedBy = moment.Now + Duration.FromHours(offering.TurnaroundHours),
            Zone = moment.Zone,
            Club = words.Club,
            BallFlight = words.BallFlight.Trim(),
            Felt = words.Felt.Trim(),
            Numbers = words.Numbers.Trim(),
            PriceMinor = offering.PriceMinor,
            TaxBasisPoints = offering.TaxBasisPoints,
        };
    }

    /// <summary>A clip of it; the same bytes twice are one.</summary>
    public void Add(Guid id, KeptContent clip, Instant now)
    {
        ArgumentNullException.ThrowIfNull(clip);
        if (!_clips.Exists(c => c.Sha256 == clip.Sha256)) _clips.Add(ReviewClip.Of(id, Id, clip, now));
    }

    /// <summary>A coach makes a lesson of it.</summary>
    public void OpenAs(LessonId lesson, AccountId coach) => (Status, LessonId, CoachId) = (ReviewStatus.Opened, lesson, coach);

    /// <summary>The answer is out.</summary>
    public void Answer(Instant now) => (Status, EndedAt) = (ReviewStatus.Answered, now);

    /// <summary>No answer is wanted any more.</summary>
    public void Withdraw(Instant now) => (Status, EndedAt) = (ReviewStatus.Withdrawn, now);
}
