using CoachOffice.Data.Access;
using CoachOffice.Data.Columns;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Lessons.Imports;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Media;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Safekeeping;
using CoachOffice.Domain.Students;
using CoachOffice.Domain.Students.Groups;
using CoachOffice.Domain.Students.Imports;
using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data;

/// <summary>One practice's database: every table of the office, the accounts and the data-protection keys.</summary>
public sealed class OfficeDb(DbContextOptions<OfficeDb> options)
    : IdentityDbContext<Account, IdentityRole<Guid>, Guid>(options), IDataProtectionKeyContext
{
    public DbSet<Practice> Practices => Set<Practice>();

    public DbSet<PrivateLink> PrivateLinks => Set<PrivateLink>();

    public DbSet<AuditEntry> AuditEntries => Set<AuditEntry>();

    public DbSet<Student> Students => Set<Student>();

    public DbSet<Payer> Payers => Set<Payer>();
    public DbSet<StudentGroup> StudentGroups => Set<StudentGroup>();

    public DbSet<GroupMember> GroupMembers => Set<GroupMember>();

    public DbSet<LedgerEntry> LedgerEntries => Set<LedgerEntry>();

    public DbSet<LedgerPosting> LedgerPostings => Set<LedgerPosting>();

    public DbSet<PackageOffer> PackageOffers => Set<PackageOffer>();

    public DbSet<Package> Packages => Set<Package>();

    public DbSet<LedgerDocument> LedgerDocuments => Set<LedgerDocument>();

    public DbSet<DocumentCounter> DocumentCounters => Set<DocumentCounter>();

    public DbSet<MoneyTerms> MoneyTerms => Set<MoneyTerms>();
    public DbSet<StudentFile> StudentFiles => Set<StudentFile>();

    public DbSet<BroughtStudent> BroughtStudents => Set<BroughtStudent>();

    public DbSet<RememberedStudentColumns> RememberedStudentColumns => Set<RememberedStudentColumns>();

    public DbSet<Lesson> Lessons => Set<Lesson>();

    public DbSet<Reading> Readings => Set<Reading>();

    public DbSet<Take> Takes => Set<Take>();

    public DbSet<ReadingSheet> ReadingSheets => Set<ReadingSheet>();

    public DbSet<SheetSend> SheetSends => Set<SheetSend>();

    public DbSet<DeviceFile> DeviceFiles => Set<DeviceFile>();

    public DbSet<RememberedColumns> RememberedColumns => Set<RememberedColumns>();

    public DbSet<SecondReading> SecondReadings => Set<SecondReading>();

    public DbSet<LessonInput> LessonInputs => Set<LessonInput>();

    public DbSet<MediaItem> MediaItems => Set<MediaItem>();

    public DbSet<MediaConsent> MediaConsents => Set<MediaConsent>();

    public DbSet<StoredDraft> StoredDrafts => Set<StoredDraft>();

    public DbSet<Plan> Plans => Set<Plan>();

    public DbSet<PlanStage> PlanStages => Set<PlanStage>();

    public DbSet<PlanChange> PlanChanges => Set<PlanChange>();

    public DbSet<PlanEdit> PlanEdits => Set<PlanEdit>();

    public DbSet<CheckIn> CheckIns => Set<CheckIn>();

    public DbSet<Retest> Retests => Set<Retest>();

    public DbSet<Message> Messages => Set<Message>();

    public DbSet<MessageRule> MessageRules => Set<MessageRule>();

    public DbSet<MessageWording> MessageWordings => Set<MessageWording>();
    public DbSet<MailBounce> MailBounces => Set<MailBounce>();

    public DbSet<CalendarFeed> CalendarFeeds => Set<CalendarFeed>();

    public DbSet<KeptRulebook> KeptRulebooks => Set<KeptRulebook>();

    public DbSet<ShippedBook> ShippedBooks => Set<ShippedBook>();

    public DbSet<RulebookEdition> RulebookEditions => Set<RulebookEdition>();

    public DbSet<BookInForce> BooksInForce => Set<BookInForce>();

    public DbSet<RulebookWork> RulebookWorks => Set<RulebookWork>();

    public DbSet<Place> Places => Set<Place>();

    public DbSet<Resource> Resources => Set<Resource>();

    public DbSet<Travel> Travels => Set<Travel>();

    public DbSet<Offering> Offerings => Set<Offering>();

    public DbSet<WeeklyHours> WeeklyHours => Set<WeeklyHours>();

    public DbSet<HoursException> HoursExceptions => Set<HoursException>();

    public DbSet<BusyTime> BusyTimes => Set<BusyTime>();

    public DbSet<Booking> Bookings => Set<Booking>();

    public DbSet<Seat> Seats => Set<Seat>();

    public DbSet<TakenTime> TakenTimes => Set<TakenTime>();

    public DbSet<BookingSeries> BookingSeries => Set<BookingSeries>();

    public DbSet<BookingTerms> BookingTerms => Set<BookingTerms>();

    public DbSet<WaitingPlace> WaitingPlaces => Set<WaitingPlace>();

    public DbSet<RemoteReview> RemoteReviews => Set<RemoteReview>();

    public DbSet<ReviewClip> ReviewClips => Set<ReviewClip>();

    public DbSet<SafetyCopy> SafetyCopies => Set<SafetyCopy>();

    public DbSet<DataProtectionKey> DataProtectionKeys { get; set; } = null!;

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        base.ConfigureConventions(configurationBuilder);
        ColumnConventions.Apply(configurationBuilder);
    }

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder builder)
    {
        base.OnModelCreating(builder);
        AccountTables.Name(builder);
        builder.ApplyConfigurationsFromAssembly(typeof(OfficeDb).Assembly);
        TableConventions.Apply(builder, Database);
    }
}
