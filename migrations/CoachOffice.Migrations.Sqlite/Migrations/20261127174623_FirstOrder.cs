using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace CoachOffice.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class FirstOrder : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Accounts",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    DisplayName = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    Policy = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    AddedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    DisabledAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Zone = table.Column<string>(type: "TEXT", maxLength: 64, nullable: true),
                    WantsMorningList = table.Column<bool>(type: "INTEGER", nullable: false),
                    UserName = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    NormalizedUserName = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    Email = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    NormalizedEmail = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    EmailConfirmed = table.Column<bool>(type: "INTEGER", nullable: false),
                    PasswordHash = table.Column<string>(type: "TEXT", nullable: true),
                    SecurityStamp = table.Column<string>(type: "TEXT", nullable: true),
                    ConcurrencyStamp = table.Column<string>(type: "TEXT", nullable: true),
                    PhoneNumber = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    PhoneNumberConfirmed = table.Column<bool>(type: "INTEGER", nullable: false),
                    TwoFactorEnabled = table.Column<bool>(type: "INTEGER", nullable: false),
                    LockoutEnd = table.Column<DateTimeOffset>(type: "TEXT", nullable: true),
                    LockoutEnabled = table.Column<bool>(type: "INTEGER", nullable: false),
                    AccessFailedCount = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Accounts", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "AuditEntries",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Account = table.Column<Guid>(type: "TEXT", nullable: true),
                    ActorName = table.Column<string>(type: "TEXT", nullable: false),
                    Action = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Subject = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    SubjectId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Detail = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AuditEntries", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "BookingSeries",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Rule = table.Column<string>(type: "TEXT", maxLength: 400, nullable: false),
                    FirstStart = table.Column<string>(type: "TEXT", maxLength: 19, nullable: false),
                    Zone = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    CreatedAt = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BookingSeries", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "BookingTerms",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    NoticeHours = table.Column<int>(type: "INTEGER", nullable: false),
                    LateFeePercent = table.Column<int>(type: "INTEGER", nullable: false),
                    NoShowFeePercent = table.Column<int>(type: "INTEGER", nullable: false),
                    LateTakesCredit = table.Column<bool>(type: "INTEGER", nullable: false),
                    HoldMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    OfferMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    EarliestHours = table.Column<int>(type: "INTEGER", nullable: false),
                    LatestDays = table.Column<int>(type: "INTEGER", nullable: false),
                    StepMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BookingTerms", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "BusyTimes",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    CoachId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Source = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    From = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Until = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BusyTimes", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "DataProtectionKeys",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    FriendlyName = table.Column<string>(type: "TEXT", nullable: true),
                    Xml = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DataProtectionKeys", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "DocumentCounters",
                columns: table => new
                {
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Year = table.Column<int>(type: "INTEGER", nullable: false),
                    Last = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DocumentCounters", x => new { x.Kind, x.Year });
                });

            migrationBuilder.CreateTable(
                name: "MessageWordings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Subject = table.Column<string>(type: "TEXT", nullable: false),
                    Body = table.Column<string>(type: "TEXT", nullable: false),
                    WrittenAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    WrittenBy = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MessageWordings", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "MoneyTerms",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    TaxMode = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Rounding = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    TaxScope = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    LegalName = table.Column<string>(type: "TEXT", maxLength: 160, nullable: false),
                    PostalAddress = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    TaxNumber = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    PaymentDays = table.Column<int>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Only = table.Column<int>(type: "INTEGER", nullable: false, defaultValue: 1)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MoneyTerms", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Offerings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    PriceMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    TaxBasisPoints = table.Column<int>(type: "INTEGER", nullable: false),
                    Minutes = table.Column<int>(type: "INTEGER", nullable: false),
                    BufferMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    Capacity = table.Column<int>(type: "INTEGER", nullable: false),
                    TurnaroundHours = table.Column<int>(type: "INTEGER", nullable: false),
                    Places = table.Column<string>(type: "TEXT", nullable: false),
                    Coaches = table.Column<string>(type: "TEXT", nullable: false),
                    Resources = table.Column<string>(type: "TEXT", nullable: false),
                    IsBookable = table.Column<bool>(type: "INTEGER", nullable: false),
                    AddedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ArchivedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Offerings", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "PackageOffers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    Lessons = table.Column<int>(type: "INTEGER", nullable: false),
                    Offerings = table.Column<string>(type: "TEXT", nullable: false),
                    PriceMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    TaxBasisPoints = table.Column<int>(type: "INTEGER", nullable: false),
                    ValidMonths = table.Column<int>(type: "INTEGER", nullable: true),
                    IsShared = table.Column<bool>(type: "INTEGER", nullable: false),
                    AddedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ArchivedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PackageOffers", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Payers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 250, nullable: false),
                    Email = table.Column<string>(type: "TEXT", maxLength: 254, nullable: false),
                    PostalAddress = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    AddedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ErasedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Payers", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Places",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    Address = table.Column<string>(type: "TEXT", maxLength: 400, nullable: false),
                    ArchivedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Places", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Practices",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    Zone = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    Currency = table.Column<string>(type: "TEXT", maxLength: 3, nullable: false),
                    Units = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    EmergencyNumber = table.Column<string>(type: "TEXT", nullable: false),
                    RequiresSecondFactor = table.Column<bool>(type: "INTEGER", nullable: false),
                    MailFrom = table.Column<string>(type: "TEXT", nullable: false),
                    PublicAddress = table.Column<string>(type: "TEXT", nullable: false),
                    IsDemo = table.Column<bool>(type: "INTEGER", nullable: false),
                    OpenedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Only = table.Column<int>(type: "INTEGER", nullable: false, defaultValue: 1)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Practices", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "ReadingSheets",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Owner = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Measures = table.Column<string>(type: "TEXT", nullable: false),
                    CreatedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ReadingSheets", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "RememberedColumns",
                columns: table => new
                {
                    HeaderSha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    Mapping = table.Column<string>(type: "TEXT", nullable: false),
                    By = table.Column<Guid>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RememberedColumns", x => x.HeaderSha256);
                });

            migrationBuilder.CreateTable(
                name: "RememberedStudentColumns",
                columns: table => new
                {
                    HeaderSha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    Columns = table.Column<string>(type: "TEXT", nullable: false),
                    By = table.Column<Guid>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RememberedStudentColumns", x => x.HeaderSha256);
                });

            migrationBuilder.CreateTable(
                name: "Roles",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    NormalizedName = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    ConcurrencyStamp = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Roles", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "RulebookWorks",
                columns: table => new
                {
                    Account = table.Column<Guid>(type: "TEXT", nullable: false),
                    Edition = table.Column<int>(type: "INTEGER", nullable: false),
                    Edits = table.Column<string>(type: "TEXT", nullable: false),
                    Dropped = table.Column<string>(type: "TEXT", nullable: false),
                    ChangedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RulebookWorks", x => x.Account);
                });

            migrationBuilder.CreateTable(
                name: "SafetyCopies",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    By = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    State = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Place = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Problem = table.Column<string>(type: "TEXT", maxLength: 500, nullable: true),
                    Rows = table.Column<long>(type: "INTEGER", nullable: false),
                    Files = table.Column<int>(type: "INTEGER", nullable: false),
                    Absent = table.Column<int>(type: "INTEGER", nullable: false),
                    Bytes = table.Column<long>(type: "INTEGER", nullable: false),
                    ProvedAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SafetyCopies", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "ShippedBooks",
                columns: table => new
                {
                    Sha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ShippedBooks", x => x.Sha256);
                });

            migrationBuilder.CreateTable(
                name: "StudentFiles",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Account = table.Column<Guid>(type: "TEXT", nullable: false),
                    ByName = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    Sha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    OpenedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Columns = table.Column<string>(type: "TEXT", nullable: true),
                    BroughtSha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: true),
                    BroughtAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Outcome = table.Column<string>(type: "TEXT", nullable: true),
                    UndoneAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StudentFiles", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "StudentGroups",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 80, nullable: false),
                    CreatedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ArchivedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StudentGroups", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "AccountClaims",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClaimType = table.Column<string>(type: "TEXT", nullable: true),
                    ClaimValue = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AccountClaims", x => x.Id);
                    table.ForeignKey(
                        name: "FK_AccountClaims_Accounts_UserId",
                        column: x => x.UserId,
                        principalTable: "Accounts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "AccountLogins",
                columns: table => new
                {
                    LoginProvider = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    ProviderKey = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    ProviderDisplayName = table.Column<string>(type: "TEXT", nullable: true),
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AccountLogins", x => new { x.LoginProvider, x.ProviderKey });
                    table.ForeignKey(
                        name: "FK_AccountLogins_Accounts_UserId",
                        column: x => x.UserId,
                        principalTable: "Accounts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "AccountPasskeys",
                columns: table => new
                {
                    CredentialId = table.Column<byte[]>(type: "BLOB", maxLength: 1024, nullable: false),
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Data = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AccountPasskeys", x => x.CredentialId);
                    table.ForeignKey(
                        name: "FK_AccountPasskeys_Accounts_UserId",
                        column: x => x.UserId,
                        principalTable: "Accounts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "AccountTokens",
                columns: table => new
                {
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    LoginProvider = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    Value = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AccountTokens", x => new { x.UserId, x.LoginProvider, x.Name });
                    table.ForeignKey(
                        name: "FK_AccountTokens_Accounts_UserId",
                        column: x => x.UserId,
                        principalTable: "Accounts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "MessageRules",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    IsOn = table.Column<bool>(type: "INTEGER", nullable: false),
                    Timing = table.Column<int>(type: "INTEGER", nullable: false),
                    WaitsForCoach = table.Column<bool>(type: "INTEGER", nullable: false),
                    WordingId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MessageRules", x => x.Id);
                    table.ForeignKey(
                        name: "FK_MessageRules_MessageWordings_WordingId",
                        column: x => x.WordingId,
                        principalTable: "MessageWordings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Students",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    GivenName = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    FamilyName = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    Email = table.Column<string>(type: "TEXT", maxLength: 254, nullable: false),
                    Phone = table.Column<string>(type: "TEXT", nullable: false),
                    BirthDate = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Guardian = table.Column<string>(type: "TEXT", nullable: true),
                    PayerId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Hand = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Level = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Goals = table.Column<string>(type: "TEXT", nullable: false),
                    Kit = table.Column<string>(type: "TEXT", nullable: false),
                    Room = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    MinutesPerWeek = table.Column<int>(type: "INTEGER", nullable: false),
                    DaysPerWeek = table.Column<int>(type: "INTEGER", nullable: false),
                    Limits = table.Column<string>(type: "TEXT", nullable: false),
                    ClubSpeedGoalMetresPerSecond = table.Column<double>(type: "REAL", nullable: true),
                    HeightCm = table.Column<double>(type: "REAL", nullable: true),
                    Notes = table.Column<string>(type: "TEXT", nullable: false),
                    SearchText = table.Column<string>(type: "TEXT", nullable: false),
                    AddedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ArchivedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    ErasedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    MergedInto = table.Column<Guid>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    MessagesStoppedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    AppointmentsStoppedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    PlansStoppedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    MoneyStoppedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    GuardianWithdrewAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Contact = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Students", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Students_Payers_PayerId",
                        column: x => x.PayerId,
                        principalTable: "Payers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Students_Students_MergedInto",
                        column: x => x.MergedInto,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "HoursExceptions",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    CoachId = table.Column<Guid>(type: "TEXT", nullable: true),
                    OpenAt = table.Column<Guid>(type: "TEXT", nullable: true),
                    LocalFrom = table.Column<string>(type: "TEXT", maxLength: 19, nullable: false),
                    LocalUntil = table.Column<string>(type: "TEXT", maxLength: 19, nullable: false),
                    From = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Until = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_HoursExceptions", x => x.Id);
                    table.ForeignKey(
                        name: "FK_HoursExceptions_Places_OpenAt",
                        column: x => x.OpenAt,
                        principalTable: "Places",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Resources",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlaceId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    ArchivedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Resources", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Resources_Places_PlaceId",
                        column: x => x.PlaceId,
                        principalTable: "Places",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Travels",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    OnePlace = table.Column<Guid>(type: "TEXT", nullable: false),
                    OtherPlace = table.Column<Guid>(type: "TEXT", nullable: false),
                    Minutes = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Travels", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Travels_Places_OnePlace",
                        column: x => x.OnePlace,
                        principalTable: "Places",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Travels_Places_OtherPlace",
                        column: x => x.OtherPlace,
                        principalTable: "Places",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "WeeklyHours",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    CoachId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlaceId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Day = table.Column<int>(type: "INTEGER", nullable: false),
                    From = table.Column<TimeOnly>(type: "TEXT", nullable: false),
                    Until = table.Column<TimeOnly>(type: "TEXT", nullable: false),
                    ValidFrom = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    ValidUntil = table.Column<DateOnly>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WeeklyHours", x => x.Id);
                    table.ForeignKey(
                        name: "FK_WeeklyHours_Places_PlaceId",
                        column: x => x.PlaceId,
                        principalTable: "Places",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "AccountRoles",
                columns: table => new
                {
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    RoleId = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AccountRoles", x => new { x.UserId, x.RoleId });
                    table.ForeignKey(
                        name: "FK_AccountRoles_Accounts_UserId",
                        column: x => x.UserId,
                        principalTable: "Accounts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_AccountRoles_Roles_RoleId",
                        column: x => x.RoleId,
                        principalTable: "Roles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "RoleClaims",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    RoleId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClaimType = table.Column<string>(type: "TEXT", nullable: true),
                    ClaimValue = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RoleClaims", x => x.Id);
                    table.ForeignKey(
                        name: "FK_RoleClaims_Roles_RoleId",
                        column: x => x.RoleId,
                        principalTable: "Roles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "KeptRulebooks",
                columns: table => new
                {
                    Sha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ShippedSha256 = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_KeptRulebooks", x => x.Sha256);
                    table.ForeignKey(
                        name: "FK_KeptRulebooks_ShippedBooks_ShippedSha256",
                        column: x => x.ShippedSha256,
                        principalTable: "ShippedBooks",
                        principalColumn: "Sha256",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "BroughtStudents",
                columns: table => new
                {
                    FileId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    IsNew = table.Column<bool>(type: "INTEGER", nullable: false),
                    Filled = table.Column<string>(type: "TEXT", nullable: false),
                    StudentVersion = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BroughtStudents", x => new { x.FileId, x.StudentId });
                    table.ForeignKey(
                        name: "FK_BroughtStudents_StudentFiles_FileId",
                        column: x => x.FileId,
                        principalTable: "StudentFiles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BroughtStudents_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CalendarFeeds",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    TokenSha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    CoachId = table.Column<Guid>(type: "TEXT", nullable: true),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: true),
                    IssuedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RevokedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    LastOpenedAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CalendarFeeds", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CalendarFeeds_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "DeviceFiles",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Account = table.Column<Guid>(type: "TEXT", nullable: false),
                    ByName = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    Sha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    OpenedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Answers = table.Column<string>(type: "TEXT", nullable: true),
                    ImportedSha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: true),
                    ImportedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Outcome = table.Column<string>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DeviceFiles", x => x.Id);
                    table.ForeignKey(
                        name: "FK_DeviceFiles_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "GroupMembers",
                columns: table => new
                {
                    GroupId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Since = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GroupMembers", x => new { x.GroupId, x.StudentId });
                    table.ForeignKey(
                        name: "FK_GroupMembers_StudentGroups_GroupId",
                        column: x => x.GroupId,
                        principalTable: "StudentGroups",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_GroupMembers_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Lessons",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    CoachId = table.Column<Guid>(type: "TEXT", nullable: false),
                    HeldOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Club = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Observations = table.Column<string>(type: "TEXT", nullable: false),
                    Notes = table.Column<string>(type: "TEXT", nullable: false),
                    CreatedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Sheet = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Lessons", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Lessons_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "MediaConsents",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    GivenBy = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    GivenOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    RecordedBy = table.Column<Guid>(type: "TEXT", nullable: false),
                    RecordedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    WithdrawnAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    WithdrawnBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MediaConsents", x => x.Id);
                    table.ForeignKey(
                        name: "FK_MediaConsents_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Packages",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    OfferId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PayerId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    IsShared = table.Column<bool>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    Lessons = table.Column<int>(type: "INTEGER", nullable: false),
                    Offerings = table.Column<string>(type: "TEXT", nullable: false),
                    TaxBasisPoints = table.Column<int>(type: "INTEGER", nullable: false),
                    SoldOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    ValidUntil = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    ClosedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Packages", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Packages_PackageOffers_OfferId",
                        column: x => x.OfferId,
                        principalTable: "PackageOffers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Packages_Payers_PayerId",
                        column: x => x.PayerId,
                        principalTable: "Payers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Packages_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Bookings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    OfferingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    CoachId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlaceId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ResourceId = table.Column<Guid>(type: "TEXT", nullable: true),
                    SeriesId = table.Column<Guid>(type: "TEXT", nullable: true),
                    SeriesStart = table.Column<string>(type: "TEXT", maxLength: 19, nullable: true),
                    LocalStart = table.Column<string>(type: "TEXT", maxLength: 19, nullable: false),
                    Zone = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Minutes = table.Column<int>(type: "INTEGER", nullable: false),
                    BufferMinutes = table.Column<int>(type: "INTEGER", nullable: false),
                    Starts = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Ends = table.Column<DateTime>(type: "TEXT", nullable: false),
                    BusyUntil = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Capacity = table.Column<int>(type: "INTEGER", nullable: false),
                    Status = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    HeldUntil = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Sequence = table.Column<int>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    CreatedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    CancelledAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Bookings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Bookings_BookingSeries_SeriesId",
                        column: x => x.SeriesId,
                        principalTable: "BookingSeries",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Bookings_Offerings_OfferingId",
                        column: x => x.OfferingId,
                        principalTable: "Offerings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Bookings_Places_PlaceId",
                        column: x => x.PlaceId,
                        principalTable: "Places",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Bookings_Resources_ResourceId",
                        column: x => x.ResourceId,
                        principalTable: "Resources",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "RulebookEditions",
                columns: table => new
                {
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Sha256 = table.Column<string>(type: "TEXT", nullable: false),
                    ShippedSha256 = table.Column<string>(type: "TEXT", nullable: false),
                    Own = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    AdoptedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    By = table.Column<Guid>(type: "TEXT", nullable: true),
                    ByName = table.Column<string>(type: "TEXT", nullable: false),
                    Why = table.Column<string>(type: "TEXT", nullable: false),
                    Changes = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RulebookEditions", x => x.Number);
                    table.ForeignKey(
                        name: "FK_RulebookEditions_KeptRulebooks_Sha256",
                        column: x => x.Sha256,
                        principalTable: "KeptRulebooks",
                        principalColumn: "Sha256",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_RulebookEditions_ShippedBooks_ShippedSha256",
                        column: x => x.ShippedSha256,
                        principalTable: "ShippedBooks",
                        principalColumn: "Sha256",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LessonInputs",
                columns: table => new
                {
                    LessonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Club = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false),
                    IsDrafted = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LessonInputs", x => x.LessonId);
                    table.ForeignKey(
                        name: "FK_LessonInputs_Lessons_LessonId",
                        column: x => x.LessonId,
                        principalTable: "Lessons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LessonInputs_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "RemoteReviews",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    OfferingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    CoachId = table.Column<Guid>(type: "TEXT", nullable: true),
                    SubmittedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PromisedBy = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Zone = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Club = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    BallFlight = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    Felt = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    Numbers = table.Column<string>(type: "TEXT", maxLength: 2000, nullable: false),
                    PriceMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    TaxBasisPoints = table.Column<int>(type: "INTEGER", nullable: false),
                    Status = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    LessonId = table.Column<Guid>(type: "TEXT", nullable: true),
                    EndedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RemoteReviews", x => x.Id);
                    table.ForeignKey(
                        name: "FK_RemoteReviews_Lessons_LessonId",
                        column: x => x.LessonId,
                        principalTable: "Lessons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_RemoteReviews_Offerings_OfferingId",
                        column: x => x.OfferingId,
                        principalTable: "Offerings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_RemoteReviews_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SheetSends",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Content = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    LessonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SheetSends", x => new { x.Id, x.Content });
                    table.ForeignKey(
                        name: "FK_SheetSends_Lessons_LessonId",
                        column: x => x.LessonId,
                        principalTable: "Lessons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StoredDrafts",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    LessonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false),
                    InputJson = table.Column<string>(type: "TEXT", nullable: false),
                    InputSha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    RulebookSha256 = table.Column<string>(type: "TEXT", nullable: false),
                    Engine = table.Column<string>(type: "TEXT", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    MadeBy = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StoredDrafts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_StoredDrafts_KeptRulebooks_RulebookSha256",
                        column: x => x.RulebookSha256,
                        principalTable: "KeptRulebooks",
                        principalColumn: "Sha256",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StoredDrafts_Lessons_LessonId",
                        column: x => x.LessonId,
                        principalTable: "Lessons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StoredDrafts_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Takes",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    LessonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    View = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Swing = table.Column<int>(type: "INTEGER", nullable: false),
                    FrameRate = table.Column<double>(type: "REAL", nullable: true),
                    AddedAt = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Takes", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Takes_Lessons_LessonId",
                        column: x => x.LessonId,
                        principalTable: "Lessons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Seats",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    BookingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Status = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    HeldUntil = table.Column<DateTime>(type: "TEXT", nullable: true),
                    PriceMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    TaxBasisPoints = table.Column<int>(type: "INTEGER", nullable: false),
                    PackageId = table.Column<Guid>(type: "TEXT", nullable: true),
                    BookedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ComingAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    EndedAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Seats", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Seats_Bookings_BookingId",
                        column: x => x.BookingId,
                        principalTable: "Bookings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Seats_Packages_PackageId",
                        column: x => x.PackageId,
                        principalTable: "Packages",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Seats_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "TakenTimes",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    BookingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Holder = table.Column<Guid>(type: "TEXT", nullable: false),
                    From = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Until = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TakenTimes", x => x.Id);
                    table.ForeignKey(
                        name: "FK_TakenTimes_Bookings_BookingId",
                        column: x => x.BookingId,
                        principalTable: "Bookings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "BooksInForce",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false),
                    Edition = table.Column<int>(type: "INTEGER", nullable: false),
                    Sha256 = table.Column<string>(type: "TEXT", nullable: false),
                    AdoptedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    AdoptedBy = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_BooksInForce", x => x.Id);
                    table.ForeignKey(
                        name: "FK_BooksInForce_KeptRulebooks_Sha256",
                        column: x => x.Sha256,
                        principalTable: "KeptRulebooks",
                        principalColumn: "Sha256",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_BooksInForce_RulebookEditions_Edition",
                        column: x => x.Edition,
                        principalTable: "RulebookEditions",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "ReviewClips",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ReviewId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Format = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Sha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    Bytes = table.Column<long>(type: "INTEGER", nullable: false),
                    AddedAt = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ReviewClips", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ReviewClips_RemoteReviews_ReviewId",
                        column: x => x.ReviewId,
                        principalTable: "RemoteReviews",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Plans",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    LessonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    DraftId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Status = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Message = table.Column<string>(type: "TEXT", nullable: false),
                    IfThen = table.Column<string>(type: "TEXT", nullable: false),
                    CreatedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ApprovedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    ApprovedBy = table.Column<string>(type: "TEXT", nullable: true),
                    HoldReason = table.Column<string>(type: "TEXT", nullable: true),
                    RestartsOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Plans", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Plans_Lessons_LessonId",
                        column: x => x.LessonId,
                        principalTable: "Lessons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Plans_StoredDrafts_DraftId",
                        column: x => x.DraftId,
                        principalTable: "StoredDrafts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Plans_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "MediaItems",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    LessonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    TakeId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Moment = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    Marks = table.Column<string>(type: "TEXT", nullable: true),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Format = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Sha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    Bytes = table.Column<long>(type: "INTEGER", nullable: false),
                    SmallSha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    Width = table.Column<int>(type: "INTEGER", nullable: false),
                    Height = table.Column<int>(type: "INTEGER", nullable: false),
                    AddedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    AddedBy = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MediaItems", x => x.Id);
                    table.ForeignKey(
                        name: "FK_MediaItems_Lessons_LessonId",
                        column: x => x.LessonId,
                        principalTable: "Lessons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_MediaItems_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_MediaItems_Takes_TakeId",
                        column: x => x.TakeId,
                        principalTable: "Takes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Readings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    LessonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    TakeId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Measure = table.Column<string>(type: "TEXT", maxLength: 80, nullable: false),
                    Value = table.Column<double>(type: "REAL", nullable: false),
                    Swing = table.Column<int>(type: "INTEGER", nullable: false),
                    Instrument = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    FrameRate = table.Column<double>(type: "REAL", nullable: true),
                    EnteredAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    WithdrawnAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Readings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Readings_Lessons_LessonId",
                        column: x => x.LessonId,
                        principalTable: "Lessons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Readings_Takes_TakeId",
                        column: x => x.TakeId,
                        principalTable: "Takes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SecondReadings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    LessonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    TakeId = table.Column<Guid>(type: "TEXT", nullable: false),
                    AskedBy = table.Column<Guid>(type: "TEXT", nullable: false),
                    AskedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    FirstBy = table.Column<Guid>(type: "TEXT", nullable: false),
                    ReadBy = table.Column<Guid>(type: "TEXT", nullable: true),
                    ReadAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Doubles = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SecondReadings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SecondReadings_Lessons_LessonId",
                        column: x => x.LessonId,
                        principalTable: "Lessons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SecondReadings_Takes_TakeId",
                        column: x => x.TakeId,
                        principalTable: "Takes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LedgerEntries",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    On = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    PayerId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: true),
                    OfferingId = table.Column<Guid>(type: "TEXT", nullable: true),
                    CoachId = table.Column<Guid>(type: "TEXT", nullable: true),
                    SeatId = table.Column<Guid>(type: "TEXT", nullable: true),
                    PackageId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Reverses = table.Column<Guid>(type: "TEXT", nullable: true),
                    Method = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    Reference = table.Column<string>(type: "TEXT", maxLength: 80, nullable: false),
                    Text = table.Column<string>(type: "TEXT", maxLength: 300, nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LedgerEntries", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LedgerEntries_LedgerEntries_Reverses",
                        column: x => x.Reverses,
                        principalTable: "LedgerEntries",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LedgerEntries_Offerings_OfferingId",
                        column: x => x.OfferingId,
                        principalTable: "Offerings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LedgerEntries_Packages_PackageId",
                        column: x => x.PackageId,
                        principalTable: "Packages",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LedgerEntries_Payers_PayerId",
                        column: x => x.PayerId,
                        principalTable: "Payers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LedgerEntries_Seats_SeatId",
                        column: x => x.SeatId,
                        principalTable: "Seats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LedgerEntries_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "WaitingPlaces",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    OfferingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    CoachId = table.Column<Guid>(type: "TEXT", nullable: true),
                    BookingId = table.Column<Guid>(type: "TEXT", nullable: true),
                    FirstDay = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    LastDay = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Status = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    JoinedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    OfferedSeat = table.Column<Guid>(type: "TEXT", nullable: true),
                    OfferedUntil = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WaitingPlaces", x => x.Id);
                    table.ForeignKey(
                        name: "FK_WaitingPlaces_Bookings_BookingId",
                        column: x => x.BookingId,
                        principalTable: "Bookings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_WaitingPlaces_Offerings_OfferingId",
                        column: x => x.OfferingId,
                        principalTable: "Offerings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_WaitingPlaces_Seats_OfferedSeat",
                        column: x => x.OfferedSeat,
                        principalTable: "Seats",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_WaitingPlaces_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CheckIns",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PracticedOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Minutes = table.Column<int>(type: "INTEGER", nullable: false),
                    RepetitionsPercent = table.Column<int>(type: "INTEGER", nullable: true),
                    CountReached = table.Column<bool>(type: "INTEGER", nullable: false),
                    StageId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Pain = table.Column<bool>(type: "INTEGER", nullable: false),
                    PainRegion = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    Emergency = table.Column<bool>(type: "INTEGER", nullable: false),
                    Comment = table.Column<string>(type: "TEXT", nullable: false),
                    SeenAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CheckIns", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CheckIns_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_CheckIns_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Messages",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: true),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: true),
                    SubjectId = table.Column<Guid>(type: "TEXT", nullable: true),
                    OnceKey = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    DueAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    State = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    AtOnce = table.Column<bool>(type: "INTEGER", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    Attempts = table.Column<int>(type: "INTEGER", nullable: false),
                    LeaseUntil = table.Column<DateTime>(type: "TEXT", nullable: true),
                    ClaimedBy = table.Column<string>(type: "TEXT", nullable: true),
                    SendingAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    SentAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    LastProblem = table.Column<string>(type: "TEXT", nullable: true),
                    OwnWords = table.Column<string>(type: "TEXT", nullable: true),
                    CreatedAt = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Messages", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Messages_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Messages_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PlanChanges",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    From = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    To = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanChanges", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PlanChanges_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PlanEdits",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Original = table.Column<string>(type: "TEXT", nullable: false),
                    Changed = table.Column<string>(type: "TEXT", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Comment = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanEdits", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PlanEdits_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PlanStages",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Order = table.Column<int>(type: "INTEGER", nullable: false),
                    Fault = table.Column<string>(type: "TEXT", maxLength: 90, nullable: false),
                    Stage = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Status = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Drills = table.Column<string>(type: "TEXT", nullable: false),
                    Gate = table.Column<string>(type: "TEXT", nullable: false),
                    StartedOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    DueOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    EndedOn = table.Column<DateOnly>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanStages", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PlanStages_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PrivateLinks",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    TokenSha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Purpose = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Stops = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    IssuedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ExpiresAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RevokedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    LastOpenedAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PrivateLinks", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PrivateLinks_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PrivateLinks_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LedgerDocuments",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Year = table.Column<int>(type: "INTEGER", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    PayerId = table.Column<Guid>(type: "TEXT", nullable: false),
                    EntryId = table.Column<Guid>(type: "TEXT", nullable: true),
                    IssuedOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false),
                    TotalMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    Content = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LedgerDocuments", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LedgerDocuments_LedgerEntries_EntryId",
                        column: x => x.EntryId,
                        principalTable: "LedgerEntries",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LedgerDocuments_Payers_PayerId",
                        column: x => x.PayerId,
                        principalTable: "Payers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LedgerPostings",
                columns: table => new
                {
                    EntryId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Line = table.Column<int>(type: "INTEGER", nullable: false),
                    Account = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    AmountMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    TaxBasisPoints = table.Column<int>(type: "INTEGER", nullable: true),
                    Text = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LedgerPostings", x => new { x.EntryId, x.Line });
                    table.ForeignKey(
                        name: "FK_LedgerPostings_LedgerEntries_EntryId",
                        column: x => x.EntryId,
                        principalTable: "LedgerEntries",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "MailBounces",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    MessageId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: true),
                    AddressSha256 = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    IsHard = table.Column<bool>(type: "INTEGER", nullable: false),
                    Status = table.Column<string>(type: "TEXT", maxLength: 11, nullable: false),
                    OnceKey = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false),
                    ReceivedAt = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MailBounces", x => x.Id);
                    table.ForeignKey(
                        name: "FK_MailBounces_Messages_MessageId",
                        column: x => x.MessageId,
                        principalTable: "Messages",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_MailBounces_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Retests",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudentId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StageId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Fault = table.Column<string>(type: "TEXT", maxLength: 90, nullable: false),
                    IsSecondLook = table.Column<bool>(type: "INTEGER", nullable: false),
                    DueOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Status = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    LessonId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Answer = table.Column<string>(type: "TEXT", maxLength: 400, nullable: false),
                    AnsweredOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    AnsweredAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Verdict = table.Column<string>(type: "TEXT", nullable: true),
                    EndedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Retests", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Retests_Lessons_LessonId",
                        column: x => x.LessonId,
                        principalTable: "Lessons",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Retests_PlanStages_StageId",
                        column: x => x.StageId,
                        principalTable: "PlanStages",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Retests_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Retests_Students_StudentId",
                        column: x => x.StudentId,
                        principalTable: "Students",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_AccountClaims_UserId",
                table: "AccountClaims",
                column: "UserId");

            migrationBuilder.CreateIndex(
                name: "IX_AccountLogins_UserId",
                table: "AccountLogins",
                column: "UserId");

            migrationBuilder.CreateIndex(
                name: "IX_AccountPasskeys_UserId",
                table: "AccountPasskeys",
                column: "UserId");

            migrationBuilder.CreateIndex(
                name: "IX_AccountRoles_RoleId",
                table: "AccountRoles",
                column: "RoleId");

            migrationBuilder.CreateIndex(
                name: "EmailIndex",
                table: "Accounts",
                column: "NormalizedEmail");

            migrationBuilder.CreateIndex(
                name: "UserNameIndex",
                table: "Accounts",
                column: "NormalizedUserName",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_AuditEntries_At",
                table: "AuditEntries",
                column: "At");

            migrationBuilder.CreateIndex(
                name: "IX_AuditEntries_SubjectId",
                table: "AuditEntries",
                column: "SubjectId");

            migrationBuilder.CreateIndex(
                name: "IX_Bookings_CoachId_Starts",
                table: "Bookings",
                columns: new[] { "CoachId", "Starts" });

            migrationBuilder.CreateIndex(
                name: "IX_Bookings_HeldUntil",
                table: "Bookings",
                column: "HeldUntil",
                filter: "\"HeldUntil\" IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Bookings_OfferingId",
                table: "Bookings",
                column: "OfferingId");

            migrationBuilder.CreateIndex(
                name: "IX_Bookings_PlaceId",
                table: "Bookings",
                column: "PlaceId");

            migrationBuilder.CreateIndex(
                name: "IX_Bookings_ResourceId",
                table: "Bookings",
                column: "ResourceId");

            migrationBuilder.CreateIndex(
                name: "IX_Bookings_SeriesId",
                table: "Bookings",
                column: "SeriesId");

            migrationBuilder.CreateIndex(
                name: "IX_Bookings_Starts_CoachId",
                table: "Bookings",
                columns: new[] { "Starts", "CoachId" });

            migrationBuilder.CreateIndex(
                name: "IX_BooksInForce_Edition",
                table: "BooksInForce",
                column: "Edition");

            migrationBuilder.CreateIndex(
                name: "IX_BooksInForce_Sha256",
                table: "BooksInForce",
                column: "Sha256");

            migrationBuilder.CreateIndex(
                name: "IX_BroughtStudents_StudentId",
                table: "BroughtStudents",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_BusyTimes_CoachId_Until_From",
                table: "BusyTimes",
                columns: new[] { "CoachId", "Until", "From" });

            migrationBuilder.CreateIndex(
                name: "IX_CalendarFeeds_CoachId",
                table: "CalendarFeeds",
                column: "CoachId");

            migrationBuilder.CreateIndex(
                name: "IX_CalendarFeeds_StudentId",
                table: "CalendarFeeds",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_CalendarFeeds_TokenSha256",
                table: "CalendarFeeds",
                column: "TokenSha256",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_CheckIns_Emergency_At",
                table: "CheckIns",
                columns: new[] { "Emergency", "At" },
                filter: "\"Pain\" AND \"SeenAt\" IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_CheckIns_PlanId_PracticedOn",
                table: "CheckIns",
                columns: new[] { "PlanId", "PracticedOn" });

            migrationBuilder.CreateIndex(
                name: "IX_CheckIns_PracticedOn_PlanId",
                table: "CheckIns",
                columns: new[] { "PracticedOn", "PlanId" });

            migrationBuilder.CreateIndex(
                name: "IX_CheckIns_StudentId",
                table: "CheckIns",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_DeviceFiles_OpenedAt",
                table: "DeviceFiles",
                column: "OpenedAt");

            migrationBuilder.CreateIndex(
                name: "IX_DeviceFiles_StudentId_ImportedSha256",
                table: "DeviceFiles",
                columns: new[] { "StudentId", "ImportedSha256" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_GroupMembers_StudentId",
                table: "GroupMembers",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_HoursExceptions_OpenAt",
                table: "HoursExceptions",
                column: "OpenAt");

            migrationBuilder.CreateIndex(
                name: "IX_HoursExceptions_Until_From",
                table: "HoursExceptions",
                columns: new[] { "Until", "From" });

            migrationBuilder.CreateIndex(
                name: "IX_KeptRulebooks_ShippedSha256",
                table: "KeptRulebooks",
                column: "ShippedSha256");

            migrationBuilder.CreateIndex(
                name: "IX_LedgerDocuments_EntryId",
                table: "LedgerDocuments",
                column: "EntryId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LedgerDocuments_Kind_Year_Number",
                table: "LedgerDocuments",
                columns: new[] { "Kind", "Year", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LedgerDocuments_PayerId",
                table: "LedgerDocuments",
                column: "PayerId");

            migrationBuilder.CreateIndex(
                name: "IX_LedgerEntries_OfferingId",
                table: "LedgerEntries",
                column: "OfferingId");

            migrationBuilder.CreateIndex(
                name: "IX_LedgerEntries_On",
                table: "LedgerEntries",
                column: "On");

            migrationBuilder.CreateIndex(
                name: "IX_LedgerEntries_PackageId",
                table: "LedgerEntries",
                column: "PackageId");

            migrationBuilder.CreateIndex(
                name: "IX_LedgerEntries_PayerId_On",
                table: "LedgerEntries",
                columns: new[] { "PayerId", "On" });

            migrationBuilder.CreateIndex(
                name: "IX_LedgerEntries_Reverses",
                table: "LedgerEntries",
                column: "Reverses",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_LedgerEntries_SeatId",
                table: "LedgerEntries",
                column: "SeatId");

            migrationBuilder.CreateIndex(
                name: "IX_LedgerEntries_StudentId",
                table: "LedgerEntries",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_LedgerPostings_Account_EntryId_AmountMinor",
                table: "LedgerPostings",
                columns: new[] { "Account", "EntryId", "AmountMinor" });

            migrationBuilder.CreateIndex(
                name: "IX_LessonInputs_StudentId",
                table: "LessonInputs",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_Lessons_CoachId_CreatedAt",
                table: "Lessons",
                columns: new[] { "CoachId", "CreatedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_Lessons_HeldOn",
                table: "Lessons",
                column: "HeldOn");

            migrationBuilder.CreateIndex(
                name: "IX_Lessons_StudentId_HeldOn",
                table: "Lessons",
                columns: new[] { "StudentId", "HeldOn" });

            migrationBuilder.CreateIndex(
                name: "IX_MailBounces_IsHard",
                table: "MailBounces",
                column: "IsHard");

            migrationBuilder.CreateIndex(
                name: "IX_MailBounces_MessageId",
                table: "MailBounces",
                column: "MessageId");

            migrationBuilder.CreateIndex(
                name: "IX_MailBounces_OnceKey",
                table: "MailBounces",
                column: "OnceKey",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_MailBounces_StudentId",
                table: "MailBounces",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_MediaConsents_StudentId",
                table: "MediaConsents",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_MediaItems_LessonId",
                table: "MediaItems",
                column: "LessonId");

            migrationBuilder.CreateIndex(
                name: "IX_MediaItems_Sha256",
                table: "MediaItems",
                column: "Sha256");

            migrationBuilder.CreateIndex(
                name: "IX_MediaItems_SmallSha256",
                table: "MediaItems",
                column: "SmallSha256");

            migrationBuilder.CreateIndex(
                name: "IX_MediaItems_StudentId",
                table: "MediaItems",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_MediaItems_TakeId",
                table: "MediaItems",
                column: "TakeId");

            migrationBuilder.CreateIndex(
                name: "IX_MessageRules_Kind",
                table: "MessageRules",
                column: "Kind",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_MessageRules_WordingId",
                table: "MessageRules",
                column: "WordingId");

            migrationBuilder.CreateIndex(
                name: "IX_Messages_Kind_State_DueAt_PlanId",
                table: "Messages",
                columns: new[] { "Kind", "State", "DueAt", "PlanId" });

            migrationBuilder.CreateIndex(
                name: "IX_Messages_OnceKey",
                table: "Messages",
                column: "OnceKey",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Messages_PlanId_Kind_State_SentAt",
                table: "Messages",
                columns: new[] { "PlanId", "Kind", "State", "SentAt" });

            migrationBuilder.CreateIndex(
                name: "IX_Messages_State_Attempts_DueAt_Id",
                table: "Messages",
                columns: new[] { "State", "Attempts", "DueAt", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_Messages_State_DueAt",
                table: "Messages",
                columns: new[] { "State", "DueAt" });

            migrationBuilder.CreateIndex(
                name: "IX_Messages_StudentId",
                table: "Messages",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_MessageWordings_Kind_WrittenAt",
                table: "MessageWordings",
                columns: new[] { "Kind", "WrittenAt" });

            migrationBuilder.CreateIndex(
                name: "IX_MoneyTerms_Only",
                table: "MoneyTerms",
                column: "Only",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Packages_OfferId",
                table: "Packages",
                column: "OfferId");

            migrationBuilder.CreateIndex(
                name: "IX_Packages_PayerId",
                table: "Packages",
                column: "PayerId");

            migrationBuilder.CreateIndex(
                name: "IX_Packages_StudentId",
                table: "Packages",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_Packages_ValidUntil",
                table: "Packages",
                column: "ValidUntil");

            migrationBuilder.CreateIndex(
                name: "IX_Payers_Name_Id",
                table: "Payers",
                columns: new[] { "Name", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_PlanChanges_PlanId",
                table: "PlanChanges",
                column: "PlanId");

            migrationBuilder.CreateIndex(
                name: "IX_PlanEdits_PlanId",
                table: "PlanEdits",
                column: "PlanId");

            migrationBuilder.CreateIndex(
                name: "IX_Plans_DraftId",
                table: "Plans",
                column: "DraftId");

            migrationBuilder.CreateIndex(
                name: "IX_Plans_LessonId",
                table: "Plans",
                column: "LessonId");

            migrationBuilder.CreateIndex(
                name: "IX_Plans_Status",
                table: "Plans",
                column: "Status");

            migrationBuilder.CreateIndex(
                name: "IX_Plans_StudentId",
                table: "Plans",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_PlanStages_PlanId",
                table: "PlanStages",
                column: "PlanId");

            migrationBuilder.CreateIndex(
                name: "IX_Practices_Only",
                table: "Practices",
                column: "Only",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_PrivateLinks_PlanId",
                table: "PrivateLinks",
                column: "PlanId");

            migrationBuilder.CreateIndex(
                name: "IX_PrivateLinks_StudentId",
                table: "PrivateLinks",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_PrivateLinks_TokenSha256",
                table: "PrivateLinks",
                column: "TokenSha256",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Readings_LessonId",
                table: "Readings",
                column: "LessonId");

            migrationBuilder.CreateIndex(
                name: "IX_Readings_Measure_Value_LessonId",
                table: "Readings",
                columns: new[] { "Measure", "Value", "LessonId" });

            migrationBuilder.CreateIndex(
                name: "IX_Readings_TakeId",
                table: "Readings",
                column: "TakeId");

            migrationBuilder.CreateIndex(
                name: "IX_ReadingSheets_Owner",
                table: "ReadingSheets",
                column: "Owner");

            migrationBuilder.CreateIndex(
                name: "IX_RemoteReviews_LessonId",
                table: "RemoteReviews",
                column: "LessonId");

            migrationBuilder.CreateIndex(
                name: "IX_RemoteReviews_OfferingId",
                table: "RemoteReviews",
                column: "OfferingId");

            migrationBuilder.CreateIndex(
                name: "IX_RemoteReviews_Status_PromisedBy",
                table: "RemoteReviews",
                columns: new[] { "Status", "PromisedBy" });

            migrationBuilder.CreateIndex(
                name: "IX_RemoteReviews_StudentId",
                table: "RemoteReviews",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_Resources_PlaceId",
                table: "Resources",
                column: "PlaceId");

            migrationBuilder.CreateIndex(
                name: "IX_Retests_LessonId",
                table: "Retests",
                column: "LessonId");

            migrationBuilder.CreateIndex(
                name: "IX_Retests_PlanId",
                table: "Retests",
                column: "PlanId");

            migrationBuilder.CreateIndex(
                name: "IX_Retests_StageId",
                table: "Retests",
                column: "StageId");

            migrationBuilder.CreateIndex(
                name: "IX_Retests_Status_DueOn",
                table: "Retests",
                columns: new[] { "Status", "DueOn" });

            migrationBuilder.CreateIndex(
                name: "IX_Retests_StudentId",
                table: "Retests",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_ReviewClips_ReviewId",
                table: "ReviewClips",
                column: "ReviewId");

            migrationBuilder.CreateIndex(
                name: "IX_ReviewClips_Sha256",
                table: "ReviewClips",
                column: "Sha256");

            migrationBuilder.CreateIndex(
                name: "IX_RoleClaims_RoleId",
                table: "RoleClaims",
                column: "RoleId");

            migrationBuilder.CreateIndex(
                name: "RoleNameIndex",
                table: "Roles",
                column: "NormalizedName",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_RulebookEditions_Sha256",
                table: "RulebookEditions",
                column: "Sha256");

            migrationBuilder.CreateIndex(
                name: "IX_RulebookEditions_ShippedSha256",
                table: "RulebookEditions",
                column: "ShippedSha256");

            migrationBuilder.CreateIndex(
                name: "IX_SafetyCopies_At",
                table: "SafetyCopies",
                column: "At");

            migrationBuilder.CreateIndex(
                name: "IX_Seats_BookingId",
                table: "Seats",
                column: "BookingId");

            migrationBuilder.CreateIndex(
                name: "IX_Seats_HeldUntil",
                table: "Seats",
                column: "HeldUntil",
                filter: "\"HeldUntil\" IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Seats_PackageId",
                table: "Seats",
                column: "PackageId",
                filter: "\"PackageId\" IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Seats_StudentId",
                table: "Seats",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_SecondReadings_LessonId",
                table: "SecondReadings",
                column: "LessonId");

            migrationBuilder.CreateIndex(
                name: "IX_SecondReadings_ReadAt",
                table: "SecondReadings",
                column: "ReadAt");

            migrationBuilder.CreateIndex(
                name: "IX_SecondReadings_TakeId",
                table: "SecondReadings",
                column: "TakeId");

            migrationBuilder.CreateIndex(
                name: "IX_SheetSends_At",
                table: "SheetSends",
                column: "At");

            migrationBuilder.CreateIndex(
                name: "IX_SheetSends_LessonId",
                table: "SheetSends",
                column: "LessonId");

            migrationBuilder.CreateIndex(
                name: "IX_StoredDrafts_LessonId",
                table: "StoredDrafts",
                column: "LessonId");

            migrationBuilder.CreateIndex(
                name: "IX_StoredDrafts_RulebookSha256",
                table: "StoredDrafts",
                column: "RulebookSha256");

            migrationBuilder.CreateIndex(
                name: "IX_StoredDrafts_StudentId",
                table: "StoredDrafts",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_StudentFiles_BroughtSha256",
                table: "StudentFiles",
                column: "BroughtSha256",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_StudentFiles_OpenedAt",
                table: "StudentFiles",
                column: "OpenedAt");

            migrationBuilder.CreateIndex(
                name: "IX_Students_ArchivedAt",
                table: "Students",
                column: "ArchivedAt");

            migrationBuilder.CreateIndex(
                name: "IX_Students_ArchivedAt_SearchText_Id",
                table: "Students",
                columns: new[] { "ArchivedAt", "SearchText", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_Students_MergedInto",
                table: "Students",
                column: "MergedInto");

            migrationBuilder.CreateIndex(
                name: "IX_Students_PayerId",
                table: "Students",
                column: "PayerId");

            migrationBuilder.CreateIndex(
                name: "IX_TakenTimes_BookingId",
                table: "TakenTimes",
                column: "BookingId");

            migrationBuilder.CreateIndex(
                name: "IX_TakenTimes_Holder_From_Until",
                table: "TakenTimes",
                columns: new[] { "Holder", "From", "Until" });

            migrationBuilder.CreateIndex(
                name: "IX_Takes_LessonId_View_Swing",
                table: "Takes",
                columns: new[] { "LessonId", "View", "Swing" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Travels_OnePlace_OtherPlace",
                table: "Travels",
                columns: new[] { "OnePlace", "OtherPlace" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Travels_OtherPlace",
                table: "Travels",
                column: "OtherPlace");

            migrationBuilder.CreateIndex(
                name: "IX_WaitingPlaces_BookingId",
                table: "WaitingPlaces",
                column: "BookingId");

            migrationBuilder.CreateIndex(
                name: "IX_WaitingPlaces_OfferedSeat",
                table: "WaitingPlaces",
                column: "OfferedSeat");

            migrationBuilder.CreateIndex(
                name: "IX_WaitingPlaces_OfferingId",
                table: "WaitingPlaces",
                column: "OfferingId");

            migrationBuilder.CreateIndex(
                name: "IX_WaitingPlaces_Status_JoinedAt",
                table: "WaitingPlaces",
                columns: new[] { "Status", "JoinedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_WaitingPlaces_StudentId",
                table: "WaitingPlaces",
                column: "StudentId");

            migrationBuilder.CreateIndex(
                name: "IX_WeeklyHours_CoachId",
                table: "WeeklyHours",
                column: "CoachId");

            migrationBuilder.CreateIndex(
                name: "IX_WeeklyHours_PlaceId",
                table: "WeeklyHours",
                column: "PlaceId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "AccountClaims");

            migrationBuilder.DropTable(
                name: "AccountLogins");

            migrationBuilder.DropTable(
                name: "AccountPasskeys");

            migrationBuilder.DropTable(
                name: "AccountRoles");

            migrationBuilder.DropTable(
                name: "AccountTokens");

            migrationBuilder.DropTable(
                name: "AuditEntries");

            migrationBuilder.DropTable(
                name: "BookingTerms");

            migrationBuilder.DropTable(
                name: "BooksInForce");

            migrationBuilder.DropTable(
                name: "BroughtStudents");

            migrationBuilder.DropTable(
                name: "BusyTimes");

            migrationBuilder.DropTable(
                name: "CalendarFeeds");

            migrationBuilder.DropTable(
                name: "CheckIns");

            migrationBuilder.DropTable(
                name: "DataProtectionKeys");

            migrationBuilder.DropTable(
                name: "DeviceFiles");

            migrationBuilder.DropTable(
                name: "DocumentCounters");

            migrationBuilder.DropTable(
                name: "GroupMembers");

            migrationBuilder.DropTable(
                name: "HoursExceptions");

            migrationBuilder.DropTable(
                name: "LedgerDocuments");

            migrationBuilder.DropTable(
                name: "LedgerPostings");

            migrationBuilder.DropTable(
                name: "LessonInputs");

            migrationBuilder.DropTable(
                name: "MailBounces");

            migrationBuilder.DropTable(
                name: "MediaConsents");

            migrationBuilder.DropTable(
                name: "MediaItems");

            migrationBuilder.DropTable(
                name: "MessageRules");

            migrationBuilder.DropTable(
                name: "MoneyTerms");

            migrationBuilder.DropTable(
                name: "PlanChanges");

            migrationBuilder.DropTable(
                name: "PlanEdits");

            migrationBuilder.DropTable(
                name: "Practices");

            migrationBuilder.DropTable(
                name: "PrivateLinks");

            migrationBuilder.DropTable(
                name: "Readings");

            migrationBuilder.DropTable(
                name: "ReadingSheets");

            migrationBuilder.DropTable(
                name: "RememberedColumns");

            migrationBuilder.DropTable(
                name: "RememberedStudentColumns");

            migrationBuilder.DropTable(
                name: "Retests");

            migrationBuilder.DropTable(
                name: "ReviewClips");

            migrationBuilder.DropTable(
                name: "RoleClaims");

            migrationBuilder.DropTable(
                name: "RulebookWorks");

            migrationBuilder.DropTable(
                name: "SafetyCopies");

            migrationBuilder.DropTable(
                name: "SecondReadings");

            migrationBuilder.DropTable(
                name: "SheetSends");

            migrationBuilder.DropTable(
                name: "TakenTimes");

            migrationBuilder.DropTable(
                name: "Travels");

            migrationBuilder.DropTable(
                name: "WaitingPlaces");

            migrationBuilder.DropTable(
                name: "WeeklyHours");

            migrationBuilder.DropTable(
                name: "Accounts");

            migrationBuilder.DropTable(
                name: "RulebookEditions");

            migrationBuilder.DropTable(
                name: "StudentFiles");

            migrationBuilder.DropTable(
                name: "StudentGroups");

            migrationBuilder.DropTable(
                name: "LedgerEntries");

            migrationBuilder.DropTable(
                name: "Messages");

            migrationBuilder.DropTable(
                name: "MessageWordings");

            migrationBuilder.DropTable(
                name: "PlanStages");

            migrationBuilder.DropTable(
                name: "RemoteReviews");

            migrationBuilder.DropTable(
                name: "Roles");

            migrationBuilder.DropTable(
                name: "Takes");

            migrationBuilder.DropTable(
                name: "Seats");

            migrationBuilder.DropTable(
                name: "Plans");

            migrationBuilder.DropTable(
                name: "Bookings");

            migrationBuilder.DropTable(
                name: "Packages");

            migrationBuilder.DropTable(
                name: "StoredDrafts");

            migrationBuilder.DropTable(
                name: "BookingSeries");

            migrationBuilder.DropTable(
                name: "Offerings");

            migrationBuilder.DropTable(
                name: "Resources");

            migrationBuilder.DropTable(
                name: "PackageOffers");

            migrationBuilder.DropTable(
                name: "KeptRulebooks");

            migrationBuilder.DropTable(
                name: "Lessons");

            migrationBuilder.DropTable(
                name: "Places");

            migrationBuilder.DropTable(
                name: "ShippedBooks");

            migrationBuilder.DropTable(
                name: "Students");

            migrationBuilder.DropTable(
                name: "Payers");
        }
    }
}
