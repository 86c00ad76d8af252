namespace CoachOffice.Domain.FollowUps;

/// <summary>What is fixed about a kind of message: what it is for, what a practice may decide about it, and within which limits.</summary>
/// <param name="Unit">What its timing counts.</param>
public sealed record MessageTraits(TimingUnit Unit = TimingUnit.None)
{
    /// <summary>What it is for.</summary>
    public MessagePurpose Purpose { get; private init; }

    /// <summary>The timing until somebody decides; common practice, no source, save the reminder's day before.</summary>
    public int Usual { get; init; }

    public int Least { get; init; }

    public int Most { get; init; }

    /// <summary>False where a person's own press writes it, so that there is nothing to turn off.</summary>
    public bool MayBeOff { get; init; } = true;

    /// <summary>True when it may wait for a coach's yes; what answers a deed of just now may not.</summary>
    public bool MayWait { get; init; }

    /// <summary>Of a kind.</summary>
    public static MessageTraits Of(MessageKind kind) => Shape(kind) with { Purpose = MessagePurposes.Of(kind) };

    /// <summary>True of kinds that speak of practice nobody asked about; their limits hold over all of them together.</summary>
    public static bool IsEncouragement(MessageKind kind) => kind is MessageKind.PracticeNudge or MessageKind.WeeklyCheckIn;

    private static MessageTraits Shape(MessageKind kind) => kind switch
    {
        MessageKind.RetestPrompt or MessageKind.SecondLook => new() { MayWait = true },
        MessageKind.PracticeNudge => new() { MayWait = true },
        MessageKind.WeeklyCheckIn => new(TimingUnit.DaysBetween) { Usual = 7, Least = 7, Most = 28, MayWait = true },
        MessageKind.LessonReminder => new(TimingUnit.HoursBefore) { Usual = 24, Least = 2, Most = 168, MayWait = true },
        MessageKind.ReviewLate => new(TimingUnit.HoursAfter) { Usual = 1, Least = 1, Most = 72, MayWait = true },
        MessageKind.PackageEnding => new(TimingUnit.DaysBefore) { Usual = 14, Least = 1, Most = 90, MayWait = true },
        MessageKind.PaymentDue => new(TimingUnit.DaysAfter) { Usual = 3, Least = 1, Most = 60, MayWait = true },
        MessageKind.MorningList => new(TimingUnit.HourOfDay) { Usual = 7, Least = 4, Most = 11 },
        MessageKind.Receipt or MessageKind.Statement => new() { MayBeOff = false },
        _ => new(),
    };
}
