CREATE TABLE IF NOT EXISTS "__EFMigrationsHistory" (
    "MigrationId" TEXT NOT NULL CONSTRAINT "PK___EFMigrationsHistory" PRIMARY KEY,
    "ProductVersion" TEXT NOT NULL
);

BEGIN TRANSACTION;
CREATE TABLE "Accounts" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Accounts" PRIMARY KEY,
    "DisplayName" TEXT NOT NULL,
    "Policy" TEXT NOT NULL,
    "AddedAt" TEXT NOT NULL,
    "DisabledAt" TEXT NULL,
    "Zone" TEXT NULL,
    "WantsMorningList" INTEGER NOT NULL,
    "UserName" TEXT NULL,
    "NormalizedUserName" TEXT NULL,
    "Email" TEXT NULL,
    "NormalizedEmail" TEXT NULL,
    "EmailConfirmed" INTEGER NOT NULL,
    "PasswordHash" TEXT NULL,
    "SecurityStamp" TEXT NULL,
    "ConcurrencyStamp" TEXT NULL,
    "PhoneNumber" TEXT NULL,
    "PhoneNumberConfirmed" INTEGER NOT NULL,
    "TwoFactorEnabled" INTEGER NOT NULL,
    "LockoutEnd" TEXT NULL,
    "LockoutEnabled" INTEGER NOT NULL,
    "AccessFailedCount" INTEGER NOT NULL
);

CREATE TABLE "AuditEntries" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_AuditEntries" PRIMARY KEY,
    "At" TEXT NOT NULL,
    "Account" TEXT NULL,
    "ActorName" TEXT NOT NULL,
    "Action" TEXT NOT NULL,
    "Subject" TEXT NOT NULL,
    "SubjectId" TEXT NOT NULL,
    "Detail" TEXT NULL
);

CREATE TABLE "BookingSeries" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_BookingSeries" PRIMARY KEY,
    "Rule" TEXT NOT NULL,
    "FirstStart" TEXT NOT NULL,
    "Zone" TEXT NOT NULL,
    "CreatedAt" TEXT NOT NULL
);

CREATE TABLE "BookingTerms" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_BookingTerms" PRIMARY KEY,
    "NoticeHours" INTEGER NOT NULL,
    "LateFeePercent" INTEGER NOT NULL,
    "NoShowFeePercent" INTEGER NOT NULL,
    "LateTakesCredit" INTEGER NOT NULL,
    "HoldMinutes" INTEGER NOT NULL,
    "OfferMinutes" INTEGER NOT NULL,
    "EarliestHours" INTEGER NOT NULL,
    "LatestDays" INTEGER NOT NULL,
    "StepMinutes" INTEGER NOT NULL,
    "Version" INTEGER NOT NULL
);

CREATE TABLE "BusyTimes" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_BusyTimes" PRIMARY KEY,
    "CoachId" TEXT NOT NULL,
    "Source" TEXT NOT NULL,
    "From" TEXT NOT NULL,
    "Until" TEXT NOT NULL
);

CREATE TABLE "DataProtectionKeys" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_DataProtectionKeys" PRIMARY KEY AUTOINCREMENT,
    "FriendlyName" TEXT NULL,
    "Xml" TEXT NULL
);

CREATE TABLE "DocumentCounters" (
    "Kind" TEXT NOT NULL,
    "Year" INTEGER NOT NULL,
    "Last" INTEGER NOT NULL,
    CONSTRAINT "PK_DocumentCounters" PRIMARY KEY ("Kind", "Year")
);

CREATE TABLE "MessageWordings" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_MessageWordings" PRIMARY KEY,
    "Kind" TEXT NOT NULL,
    "Subject" TEXT NOT NULL,
    "Body" TEXT NOT NULL,
    "WrittenAt" TEXT NOT NULL,
    "WrittenBy" TEXT NOT NULL
);

CREATE TABLE "MoneyTerms" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_MoneyTerms" PRIMARY KEY,
    "TaxMode" TEXT NOT NULL,
    "Rounding" TEXT NOT NULL,
    "TaxScope" TEXT NOT NULL,
    "LegalName" TEXT NOT NULL,
    "PostalAddress" TEXT NOT NULL,
    "TaxNumber" TEXT NOT NULL,
    "PaymentDays" INTEGER NOT NULL,
    "Version" INTEGER NOT NULL,
    "Only" INTEGER NOT NULL DEFAULT 1
);

CREATE TABLE "Offerings" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Offerings" PRIMARY KEY,
    "Name" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "PriceMinor" INTEGER NOT NULL,
    "TaxBasisPoints" INTEGER NOT NULL,
    "Minutes" INTEGER NOT NULL,
    "BufferMinutes" INTEGER NOT NULL,
    "Capacity" INTEGER NOT NULL,
    "TurnaroundHours" INTEGER NOT NULL,
    "Places" TEXT NOT NULL,
    "Coaches" TEXT NOT NULL,
    "Resources" TEXT NOT NULL,
    "IsBookable" INTEGER NOT NULL,
    "AddedAt" TEXT NOT NULL,
    "ArchivedAt" TEXT NULL,
    "Version" INTEGER NOT NULL
);

CREATE TABLE "PackageOffers" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_PackageOffers" PRIMARY KEY,
    "Name" TEXT NOT NULL,
    "Lessons" INTEGER NOT NULL,
    "Offerings" TEXT NOT NULL,
    "PriceMinor" INTEGER NOT NULL,
    "TaxBasisPoints" INTEGER NOT NULL,
    "ValidMonths" INTEGER NULL,
    "IsShared" INTEGER NOT NULL,
    "AddedAt" TEXT NOT NULL,
    "ArchivedAt" TEXT NULL,
    "Version" INTEGER NOT NULL
);

CREATE TABLE "Payers" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Payers" PRIMARY KEY,
    "Name" TEXT NOT NULL,
    "Email" TEXT NOT NULL,
    "PostalAddress" TEXT NOT NULL,
    "AddedAt" TEXT NOT NULL,
    "ErasedAt" TEXT NULL,
    "Version" INTEGER NOT NULL
);

CREATE TABLE "Places" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Places" PRIMARY KEY,
    "Name" TEXT NOT NULL,
    "Address" TEXT NOT NULL,
    "ArchivedAt" TEXT NULL,
    "Version" INTEGER NOT NULL
);

CREATE TABLE "Practices" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Practices" PRIMARY KEY,
    "Name" TEXT NOT NULL,
    "Zone" TEXT NOT NULL,
    "Currency" TEXT NOT NULL,
    "Units" TEXT NOT NULL,
    "EmergencyNumber" TEXT NOT NULL,
    "RequiresSecondFactor" INTEGER NOT NULL,
    "MailFrom" TEXT NOT NULL,
    "PublicAddress" TEXT NOT NULL,
    "IsDemo" INTEGER NOT NULL,
    "OpenedAt" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    "Only" INTEGER NOT NULL DEFAULT 1
);

CREATE TABLE "ReadingSheets" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_ReadingSheets" PRIMARY KEY,
    "Owner" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Measures" TEXT NOT NULL,
    "CreatedAt" TEXT NOT NULL,
    "Version" INTEGER NOT NULL
);

CREATE TABLE "RememberedColumns" (
    "HeaderSha256" TEXT NOT NULL CONSTRAINT "PK_RememberedColumns" PRIMARY KEY,
    "Mapping" TEXT NOT NULL,
    "By" TEXT NOT NULL,
    "At" TEXT NOT NULL
);

CREATE TABLE "RememberedStudentColumns" (
    "HeaderSha256" TEXT NOT NULL CONSTRAINT "PK_RememberedStudentColumns" PRIMARY KEY,
    "Columns" TEXT NOT NULL,
    "By" TEXT NOT NULL,
    "At" TEXT NOT NULL
);

CREATE TABLE "Roles" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Roles" PRIMARY KEY,
    "Name" TEXT NULL,
    "NormalizedName" TEXT NULL,
    "ConcurrencyStamp" TEXT NULL
);

CREATE TABLE "RulebookWorks" (
    "Account" TEXT NOT NULL CONSTRAINT "PK_RulebookWorks" PRIMARY KEY,
    "Edition" INTEGER NOT NULL,
    "Edits" TEXT NOT NULL,
    "Dropped" TEXT NOT NULL,
    "ChangedAt" TEXT NOT NULL,
    "Version" INTEGER NOT NULL
);

CREATE TABLE "SafetyCopies" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_SafetyCopies" PRIMARY KEY,
    "At" TEXT NOT NULL,
    "By" TEXT NOT NULL,
    "State" TEXT NOT NULL,
    "Place" TEXT NOT NULL,
    "Problem" TEXT NULL,
    "Rows" INTEGER NOT NULL,
    "Files" INTEGER NOT NULL,
    "Absent" INTEGER NOT NULL,
    "Bytes" INTEGER NOT NULL,
    "ProvedAt" TEXT NULL
);

CREATE TABLE "ShippedBooks" (
    "Sha256" TEXT NOT NULL CONSTRAINT "PK_ShippedBooks" PRIMARY KEY,
    "Text" TEXT NOT NULL,
    "KeptAt" TEXT NOT NULL
);

CREATE TABLE "StudentFiles" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_StudentFiles" PRIMARY KEY,
    "Account" TEXT NOT NULL,
    "ByName" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Sha256" TEXT NOT NULL,
    "OpenedAt" TEXT NOT NULL,
    "Columns" TEXT NULL,
    "BroughtSha256" TEXT NULL,
    "BroughtAt" TEXT NULL,
    "Outcome" TEXT NULL,
    "UndoneAt" TEXT NULL,
    "Version" INTEGER NOT NULL
);

CREATE TABLE "StudentGroups" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_StudentGroups" PRIMARY KEY,
    "Name" TEXT NOT NULL,
    "CreatedAt" TEXT NOT NULL,
    "ArchivedAt" TEXT NULL,
    "Version" INTEGER NOT NULL
);

CREATE TABLE "AccountClaims" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_AccountClaims" PRIMARY KEY AUTOINCREMENT,
    "UserId" TEXT NOT NULL,
    "ClaimType" TEXT NULL,
    "ClaimValue" TEXT NULL,
    CONSTRAINT "FK_AccountClaims_Accounts_UserId" FOREIGN KEY ("UserId") REFERENCES "Accounts" ("Id") ON DELETE CASCADE
);

CREATE TABLE "AccountLogins" (
    "LoginProvider" TEXT NOT NULL,
    "ProviderKey" TEXT NOT NULL,
    "ProviderDisplayName" TEXT NULL,
    "UserId" TEXT NOT NULL,
    CONSTRAINT "PK_AccountLogins" PRIMARY KEY ("LoginProvider", "ProviderKey"),
    CONSTRAINT "FK_AccountLogins_Accounts_UserId" FOREIGN KEY ("UserId") REFERENCES "Accounts" ("Id") ON DELETE CASCADE
);

CREATE TABLE "AccountPasskeys" (
    "CredentialId" BLOB NOT NULL CONSTRAINT "PK_AccountPasskeys" PRIMARY KEY,
    "UserId" TEXT NOT NULL,
    "Data" TEXT NOT NULL,
    CONSTRAINT "FK_AccountPasskeys_Accounts_UserId" FOREIGN KEY ("UserId") REFERENCES "Accounts" ("Id") ON DELETE CASCADE
);

CREATE TABLE "AccountTokens" (
    "UserId" TEXT NOT NULL,
    "LoginProvider" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Value" TEXT NULL,
    CONSTRAINT "PK_AccountTokens" PRIMARY KEY ("UserId", "LoginProvider", "Name"),
    CONSTRAINT "FK_AccountTokens_Accounts_UserId" FOREIGN KEY ("UserId") REFERENCES "Accounts" ("Id") ON DELETE CASCADE
);

CREATE TABLE "MessageRules" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_MessageRules" PRIMARY KEY,
    "Kind" TEXT NOT NULL,
    "IsOn" INTEGER NOT NULL,
    "Timing" INTEGER NOT NULL,
    "WaitsForCoach" INTEGER NOT NULL,
    "WordingId" TEXT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_MessageRules_MessageWordings_WordingId" FOREIGN KEY ("WordingId") REFERENCES "MessageWordings" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Students" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Students" PRIMARY KEY,
    "GivenName" TEXT NOT NULL,
    "FamilyName" TEXT NOT NULL,
    "Email" TEXT NOT NULL,
    "Phone" TEXT NOT NULL,
    "BirthDate" TEXT NULL,
    "Guardian" TEXT NULL,
    "PayerId" TEXT NULL,
    "Hand" TEXT NOT NULL,
    "Level" TEXT NOT NULL,
    "Goals" TEXT NOT NULL,
    "Kit" TEXT NOT NULL,
    "Room" TEXT NOT NULL,
    "MinutesPerWeek" INTEGER NOT NULL,
    "DaysPerWeek" INTEGER NOT NULL,
    "Limits" TEXT NOT NULL,
    "ClubSpeedGoalMetresPerSecond" REAL NULL,
    "HeightCm" REAL NULL,
    "Notes" TEXT NOT NULL,
    "SearchText" TEXT NOT NULL,
    "AddedAt" TEXT NOT NULL,
    "ArchivedAt" TEXT NULL,
    "ErasedAt" TEXT NULL,
    "MergedInto" TEXT NULL,
    "Version" INTEGER NOT NULL,
    "MessagesStoppedAt" TEXT NULL,
    "AppointmentsStoppedAt" TEXT NULL,
    "PlansStoppedAt" TEXT NULL,
    "MoneyStoppedAt" TEXT NULL,
    "GuardianWithdrewAt" TEXT NULL,
    "Contact" TEXT NOT NULL,
    CONSTRAINT "FK_Students_Payers_PayerId" FOREIGN KEY ("PayerId") REFERENCES "Payers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Students_Students_MergedInto" FOREIGN KEY ("MergedInto") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "HoursExceptions" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_HoursExceptions" PRIMARY KEY,
    "CoachId" TEXT NULL,
    "OpenAt" TEXT NULL,
    "LocalFrom" TEXT NOT NULL,
    "LocalUntil" TEXT NOT NULL,
    "From" TEXT NOT NULL,
    "Until" TEXT NOT NULL,
    "Note" TEXT NOT NULL,
    CONSTRAINT "FK_HoursExceptions_Places_OpenAt" FOREIGN KEY ("OpenAt") REFERENCES "Places" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Resources" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Resources" PRIMARY KEY,
    "PlaceId" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "ArchivedAt" TEXT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_Resources_Places_PlaceId" FOREIGN KEY ("PlaceId") REFERENCES "Places" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Travels" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Travels" PRIMARY KEY,
    "OnePlace" TEXT NOT NULL,
    "OtherPlace" TEXT NOT NULL,
    "Minutes" INTEGER NOT NULL,
    CONSTRAINT "FK_Travels_Places_OnePlace" FOREIGN KEY ("OnePlace") REFERENCES "Places" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Travels_Places_OtherPlace" FOREIGN KEY ("OtherPlace") REFERENCES "Places" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "WeeklyHours" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_WeeklyHours" PRIMARY KEY,
    "CoachId" TEXT NOT NULL,
    "PlaceId" TEXT NOT NULL,
    "Day" INTEGER NOT NULL,
    "From" TEXT NOT NULL,
    "Until" TEXT NOT NULL,
    "ValidFrom" TEXT NOT NULL,
    "ValidUntil" TEXT NULL,
    CONSTRAINT "FK_WeeklyHours_Places_PlaceId" FOREIGN KEY ("PlaceId") REFERENCES "Places" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "AccountRoles" (
    "UserId" TEXT NOT NULL,
    "RoleId" TEXT NOT NULL,
    CONSTRAINT "PK_AccountRoles" PRIMARY KEY ("UserId", "RoleId"),
    CONSTRAINT "FK_AccountRoles_Accounts_UserId" FOREIGN KEY ("UserId") REFERENCES "Accounts" ("Id") ON DELETE CASCADE,
    CONSTRAINT "FK_AccountRoles_Roles_RoleId" FOREIGN KEY ("RoleId") REFERENCES "Roles" ("Id") ON DELETE CASCADE
);

CREATE TABLE "RoleClaims" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_RoleClaims" PRIMARY KEY AUTOINCREMENT,
    "RoleId" TEXT NOT NULL,
    "ClaimType" TEXT NULL,
    "ClaimValue" TEXT NULL,
    CONSTRAINT "FK_RoleClaims_Roles_RoleId" FOREIGN KEY ("RoleId") REFERENCES "Roles" ("Id") ON DELETE CASCADE
);

CREATE TABLE "KeptRulebooks" (
    "Sha256" TEXT NOT NULL CONSTRAINT "PK_KeptRulebooks" PRIMARY KEY,
    "Text" TEXT NOT NULL,
    "KeptAt" TEXT NOT NULL,
    "ShippedSha256" TEXT NULL,
    CONSTRAINT "FK_KeptRulebooks_ShippedBooks_ShippedSha256" FOREIGN KEY ("ShippedSha256") REFERENCES "ShippedBooks" ("Sha256") ON DELETE RESTRICT
);

CREATE TABLE "BroughtStudents" (
    "FileId" TEXT NOT NULL,
    "StudentId" TEXT NOT NULL,
    "IsNew" INTEGER NOT NULL,
    "Filled" TEXT NOT NULL,
    "StudentVersion" INTEGER NOT NULL,
    CONSTRAINT "PK_BroughtStudents" PRIMARY KEY ("FileId", "StudentId"),
    CONSTRAINT "FK_BroughtStudents_StudentFiles_FileId" FOREIGN KEY ("FileId") REFERENCES "StudentFiles" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_BroughtStudents_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "CalendarFeeds" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_CalendarFeeds" PRIMARY KEY,
    "TokenSha256" TEXT NOT NULL,
    "CoachId" TEXT NULL,
    "StudentId" TEXT NULL,
    "IssuedAt" TEXT NOT NULL,
    "RevokedAt" TEXT NULL,
    "LastOpenedAt" TEXT NULL,
    CONSTRAINT "FK_CalendarFeeds_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "DeviceFiles" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_DeviceFiles" PRIMARY KEY,
    "StudentId" TEXT NOT NULL,
    "Account" TEXT NOT NULL,
    "ByName" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Sha256" TEXT NOT NULL,
    "OpenedAt" TEXT NOT NULL,
    "Answers" TEXT NULL,
    "ImportedSha256" TEXT NULL,
    "ImportedAt" TEXT NULL,
    "Outcome" TEXT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_DeviceFiles_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "GroupMembers" (
    "GroupId" TEXT NOT NULL,
    "StudentId" TEXT NOT NULL,
    "Since" TEXT NOT NULL,
    CONSTRAINT "PK_GroupMembers" PRIMARY KEY ("GroupId", "StudentId"),
    CONSTRAINT "FK_GroupMembers_StudentGroups_GroupId" FOREIGN KEY ("GroupId") REFERENCES "StudentGroups" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_GroupMembers_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Lessons" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Lessons" PRIMARY KEY,
    "StudentId" TEXT NOT NULL,
    "CoachId" TEXT NOT NULL,
    "HeldOn" TEXT NOT NULL,
    "Club" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "Observations" TEXT NOT NULL,
    "Notes" TEXT NOT NULL,
    "CreatedAt" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    "Sheet" TEXT NOT NULL,
    CONSTRAINT "FK_Lessons_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "MediaConsents" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_MediaConsents" PRIMARY KEY,
    "StudentId" TEXT NOT NULL,
    "GivenBy" TEXT NOT NULL,
    "GivenOn" TEXT NOT NULL,
    "RecordedBy" TEXT NOT NULL,
    "RecordedAt" TEXT NOT NULL,
    "WithdrawnAt" TEXT NULL,
    "WithdrawnBy" TEXT NULL,
    CONSTRAINT "FK_MediaConsents_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Packages" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Packages" PRIMARY KEY,
    "OfferId" TEXT NOT NULL,
    "PayerId" TEXT NOT NULL,
    "StudentId" TEXT NOT NULL,
    "IsShared" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "Lessons" INTEGER NOT NULL,
    "Offerings" TEXT NOT NULL,
    "TaxBasisPoints" INTEGER NOT NULL,
    "SoldOn" TEXT NOT NULL,
    "ValidUntil" TEXT NULL,
    "ClosedAt" TEXT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_Packages_PackageOffers_OfferId" FOREIGN KEY ("OfferId") REFERENCES "PackageOffers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Packages_Payers_PayerId" FOREIGN KEY ("PayerId") REFERENCES "Payers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Packages_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Bookings" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Bookings" PRIMARY KEY,
    "OfferingId" TEXT NOT NULL,
    "CoachId" TEXT NOT NULL,
    "PlaceId" TEXT NOT NULL,
    "ResourceId" TEXT NULL,
    "SeriesId" TEXT NULL,
    "SeriesStart" TEXT NULL,
    "LocalStart" TEXT NOT NULL,
    "Zone" TEXT NOT NULL,
    "Minutes" INTEGER NOT NULL,
    "BufferMinutes" INTEGER NOT NULL,
    "Starts" TEXT NOT NULL,
    "Ends" TEXT NOT NULL,
    "BusyUntil" TEXT NOT NULL,
    "Capacity" INTEGER NOT NULL,
    "Status" TEXT NOT NULL,
    "HeldUntil" TEXT NULL,
    "Sequence" INTEGER NOT NULL,
    "Note" TEXT NOT NULL,
    "CreatedAt" TEXT NOT NULL,
    "CancelledAt" TEXT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_Bookings_BookingSeries_SeriesId" FOREIGN KEY ("SeriesId") REFERENCES "BookingSeries" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Bookings_Offerings_OfferingId" FOREIGN KEY ("OfferingId") REFERENCES "Offerings" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Bookings_Places_PlaceId" FOREIGN KEY ("PlaceId") REFERENCES "Places" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Bookings_Resources_ResourceId" FOREIGN KEY ("ResourceId") REFERENCES "Resources" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "RulebookEditions" (
    "Number" INTEGER NOT NULL CONSTRAINT "PK_RulebookEditions" PRIMARY KEY,
    "Sha256" TEXT NOT NULL,
    "ShippedSha256" TEXT NOT NULL,
    "Own" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "AdoptedAt" TEXT NOT NULL,
    "By" TEXT NULL,
    "ByName" TEXT NOT NULL,
    "Why" TEXT NOT NULL,
    "Changes" TEXT NOT NULL,
    CONSTRAINT "FK_RulebookEditions_KeptRulebooks_Sha256" FOREIGN KEY ("Sha256") REFERENCES "KeptRulebooks" ("Sha256") ON DELETE RESTRICT,
    CONSTRAINT "FK_RulebookEditions_ShippedBooks_ShippedSha256" FOREIGN KEY ("ShippedSha256") REFERENCES "ShippedBooks" ("Sha256") ON DELETE RESTRICT
);

CREATE TABLE "LessonInputs" (
    "LessonId" TEXT NOT NULL CONSTRAINT "PK_LessonInputs" PRIMARY KEY,
    "StudentId" TEXT NOT NULL,
    "Club" TEXT NOT NULL,
    "Json" TEXT NOT NULL,
    "IsDrafted" INTEGER NOT NULL,
    CONSTRAINT "FK_LessonInputs_Lessons_LessonId" FOREIGN KEY ("LessonId") REFERENCES "Lessons" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_LessonInputs_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "RemoteReviews" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_RemoteReviews" PRIMARY KEY,
    "StudentId" TEXT NOT NULL,
    "OfferingId" TEXT NOT NULL,
    "CoachId" TEXT NULL,
    "SubmittedAt" TEXT NOT NULL,
    "PromisedBy" TEXT NOT NULL,
    "Zone" TEXT NOT NULL,
    "Club" TEXT NOT NULL,
    "BallFlight" TEXT NOT NULL,
    "Felt" TEXT NOT NULL,
    "Numbers" TEXT NOT NULL,
    "PriceMinor" INTEGER NOT NULL,
    "TaxBasisPoints" INTEGER NOT NULL,
    "Status" TEXT NOT NULL,
    "LessonId" TEXT NULL,
    "EndedAt" TEXT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_RemoteReviews_Lessons_LessonId" FOREIGN KEY ("LessonId") REFERENCES "Lessons" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_RemoteReviews_Offerings_OfferingId" FOREIGN KEY ("OfferingId") REFERENCES "Offerings" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_RemoteReviews_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "SheetSends" (
    "Id" TEXT NOT NULL,
    "Content" TEXT NOT NULL,
    "LessonId" TEXT NOT NULL,
    "At" TEXT NOT NULL,
    CONSTRAINT "PK_SheetSends" PRIMARY KEY ("Id", "Content"),
    CONSTRAINT "FK_SheetSends_Lessons_LessonId" FOREIGN KEY ("LessonId") REFERENCES "Lessons" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "StoredDrafts" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_StoredDrafts" PRIMARY KEY,
    "LessonId" TEXT NOT NULL,
    "StudentId" TEXT NOT NULL,
    "Json" TEXT NOT NULL,
    "InputJson" TEXT NOT NULL,
    "InputSha256" TEXT NOT NULL,
    "RulebookSha256" TEXT NOT NULL,
    "Engine" TEXT NOT NULL,
    "MadeAt" TEXT NOT NULL,
    "MadeBy" TEXT NOT NULL,
    CONSTRAINT "FK_StoredDrafts_KeptRulebooks_RulebookSha256" FOREIGN KEY ("RulebookSha256") REFERENCES "KeptRulebooks" ("Sha256") ON DELETE RESTRICT,
    CONSTRAINT "FK_StoredDrafts_Lessons_LessonId" FOREIGN KEY ("LessonId") REFERENCES "Lessons" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_StoredDrafts_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Takes" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Takes" PRIMARY KEY,
    "LessonId" TEXT NOT NULL,
    "View" TEXT NOT NULL,
    "Swing" INTEGER NOT NULL,
    "FrameRate" REAL NULL,
    "AddedAt" TEXT NOT NULL,
    CONSTRAINT "FK_Takes_Lessons_LessonId" FOREIGN KEY ("LessonId") REFERENCES "Lessons" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Seats" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Seats" PRIMARY KEY,
    "BookingId" TEXT NOT NULL,
    "StudentId" TEXT NOT NULL,
    "Status" TEXT NOT NULL,
    "HeldUntil" TEXT NULL,
    "PriceMinor" INTEGER NOT NULL,
    "TaxBasisPoints" INTEGER NOT NULL,
    "PackageId" TEXT NULL,
    "BookedAt" TEXT NOT NULL,
    "ComingAt" TEXT NULL,
    "EndedAt" TEXT NULL,
    CONSTRAINT "FK_Seats_Bookings_BookingId" FOREIGN KEY ("BookingId") REFERENCES "Bookings" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Seats_Packages_PackageId" FOREIGN KEY ("PackageId") REFERENCES "Packages" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Seats_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "TakenTimes" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_TakenTimes" PRIMARY KEY,
    "BookingId" TEXT NOT NULL,
    "Holder" TEXT NOT NULL,
    "From" TEXT NOT NULL,
    "Until" TEXT NOT NULL,
    CONSTRAINT "FK_TakenTimes_Bookings_BookingId" FOREIGN KEY ("BookingId") REFERENCES "Bookings" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "BooksInForce" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_BooksInForce" PRIMARY KEY,
    "Edition" INTEGER NOT NULL,
    "Sha256" TEXT NOT NULL,
    "AdoptedAt" TEXT NOT NULL,
    "AdoptedBy" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_BooksInForce_KeptRulebooks_Sha256" FOREIGN KEY ("Sha256") REFERENCES "KeptRulebooks" ("Sha256") ON DELETE RESTRICT,
    CONSTRAINT "FK_BooksInForce_RulebookEditions_Edition" FOREIGN KEY ("Edition") REFERENCES "RulebookEditions" ("Number") ON DELETE RESTRICT
);

CREATE TABLE "ReviewClips" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_ReviewClips" PRIMARY KEY,
    "ReviewId" TEXT NOT NULL,
    "Format" TEXT NOT NULL,
    "Sha256" TEXT NOT NULL,
    "Bytes" INTEGER NOT NULL,
    "AddedAt" TEXT NOT NULL,
    CONSTRAINT "FK_ReviewClips_RemoteReviews_ReviewId" FOREIGN KEY ("ReviewId") REFERENCES "RemoteReviews" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Plans" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Plans" PRIMARY KEY,
    "StudentId" TEXT NOT NULL,
    "LessonId" TEXT NOT NULL,
    "DraftId" TEXT NOT NULL,
    "Status" TEXT NOT NULL,
    "Message" TEXT NOT NULL,
    "IfThen" TEXT NOT NULL,
    "CreatedAt" TEXT NOT NULL,
    "ApprovedAt" TEXT NULL,
    "ApprovedBy" TEXT NULL,
    "HoldReason" TEXT NULL,
    "RestartsOn" TEXT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_Plans_Lessons_LessonId" FOREIGN KEY ("LessonId") REFERENCES "Lessons" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Plans_StoredDrafts_DraftId" FOREIGN KEY ("DraftId") REFERENCES "StoredDrafts" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Plans_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "MediaItems" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_MediaItems" PRIMARY KEY,
    "LessonId" TEXT NOT NULL,
    "TakeId" TEXT NULL,
    "Moment" TEXT NULL,
    "Marks" TEXT NULL,
    "StudentId" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "Format" TEXT NOT NULL,
    "Sha256" TEXT NOT NULL,
    "Bytes" INTEGER NOT NULL,
    "SmallSha256" TEXT NOT NULL,
    "Width" INTEGER NOT NULL,
    "Height" INTEGER NOT NULL,
    "AddedAt" TEXT NOT NULL,
    "AddedBy" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_MediaItems_Lessons_LessonId" FOREIGN KEY ("LessonId") REFERENCES "Lessons" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_MediaItems_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_MediaItems_Takes_TakeId" FOREIGN KEY ("TakeId") REFERENCES "Takes" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Readings" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Readings" PRIMARY KEY,
    "LessonId" TEXT NOT NULL,
    "TakeId" TEXT NOT NULL,
    "Measure" TEXT NOT NULL,
    "Value" REAL NOT NULL,
    "Swing" INTEGER NOT NULL,
    "Instrument" TEXT NOT NULL,
    "FrameRate" REAL NULL,
    "EnteredAt" TEXT NOT NULL,
    "WithdrawnAt" TEXT NULL,
    CONSTRAINT "FK_Readings_Lessons_LessonId" FOREIGN KEY ("LessonId") REFERENCES "Lessons" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Readings_Takes_TakeId" FOREIGN KEY ("TakeId") REFERENCES "Takes" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "SecondReadings" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_SecondReadings" PRIMARY KEY,
    "LessonId" TEXT NOT NULL,
    "TakeId" TEXT NOT NULL,
    "AskedBy" TEXT NOT NULL,
    "AskedAt" TEXT NOT NULL,
    "FirstBy" TEXT NOT NULL,
    "ReadBy" TEXT NULL,
    "ReadAt" TEXT NULL,
    "Doubles" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_SecondReadings_Lessons_LessonId" FOREIGN KEY ("LessonId") REFERENCES "Lessons" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_SecondReadings_Takes_TakeId" FOREIGN KEY ("TakeId") REFERENCES "Takes" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "LedgerEntries" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_LedgerEntries" PRIMARY KEY,
    "At" TEXT NOT NULL,
    "On" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "PayerId" TEXT NOT NULL,
    "StudentId" TEXT NULL,
    "OfferingId" TEXT NULL,
    "CoachId" TEXT NULL,
    "SeatId" TEXT NULL,
    "PackageId" TEXT NULL,
    "Reverses" TEXT NULL,
    "Method" TEXT NULL,
    "Reference" TEXT NOT NULL,
    "Text" TEXT NOT NULL,
    "By" TEXT NOT NULL,
    CONSTRAINT "FK_LedgerEntries_LedgerEntries_Reverses" FOREIGN KEY ("Reverses") REFERENCES "LedgerEntries" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_LedgerEntries_Offerings_OfferingId" FOREIGN KEY ("OfferingId") REFERENCES "Offerings" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_LedgerEntries_Packages_PackageId" FOREIGN KEY ("PackageId") REFERENCES "Packages" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_LedgerEntries_Payers_PayerId" FOREIGN KEY ("PayerId") REFERENCES "Payers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_LedgerEntries_Seats_SeatId" FOREIGN KEY ("SeatId") REFERENCES "Seats" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_LedgerEntries_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "WaitingPlaces" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_WaitingPlaces" PRIMARY KEY,
    "StudentId" TEXT NOT NULL,
    "OfferingId" TEXT NOT NULL,
    "CoachId" TEXT NULL,
    "BookingId" TEXT NULL,
    "FirstDay" TEXT NOT NULL,
    "LastDay" TEXT NOT NULL,
    "Status" TEXT NOT NULL,
    "JoinedAt" TEXT NOT NULL,
    "OfferedSeat" TEXT NULL,
    "OfferedUntil" TEXT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_WaitingPlaces_Bookings_BookingId" FOREIGN KEY ("BookingId") REFERENCES "Bookings" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_WaitingPlaces_Offerings_OfferingId" FOREIGN KEY ("OfferingId") REFERENCES "Offerings" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_WaitingPlaces_Seats_OfferedSeat" FOREIGN KEY ("OfferedSeat") REFERENCES "Seats" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_WaitingPlaces_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "CheckIns" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_CheckIns" PRIMARY KEY,
    "PlanId" TEXT NOT NULL,
    "StudentId" TEXT NOT NULL,
    "At" TEXT NOT NULL,
    "PracticedOn" TEXT NOT NULL,
    "Minutes" INTEGER NOT NULL,
    "RepetitionsPercent" INTEGER NULL,
    "CountReached" INTEGER NOT NULL,
    "StageId" TEXT NULL,
    "Pain" INTEGER NOT NULL,
    "PainRegion" TEXT NULL,
    "Emergency" INTEGER NOT NULL,
    "Comment" TEXT NOT NULL,
    "SeenAt" TEXT NULL,
    CONSTRAINT "FK_CheckIns_Plans_PlanId" FOREIGN KEY ("PlanId") REFERENCES "Plans" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_CheckIns_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Messages" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Messages" PRIMARY KEY,
    "Kind" TEXT NOT NULL,
    "StudentId" TEXT NULL,
    "PlanId" TEXT NULL,
    "SubjectId" TEXT NULL,
    "OnceKey" TEXT NOT NULL,
    "DueAt" TEXT NOT NULL,
    "State" TEXT NOT NULL,
    "AtOnce" INTEGER NOT NULL,
    "Reason" TEXT NOT NULL,
    "Attempts" INTEGER NOT NULL,
    "LeaseUntil" TEXT NULL,
    "ClaimedBy" TEXT NULL,
    "SendingAt" TEXT NULL,
    "SentAt" TEXT NULL,
    "LastProblem" TEXT NULL,
    "OwnWords" TEXT NULL,
    "CreatedAt" TEXT NOT NULL,
    CONSTRAINT "FK_Messages_Plans_PlanId" FOREIGN KEY ("PlanId") REFERENCES "Plans" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Messages_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "PlanChanges" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_PlanChanges" PRIMARY KEY,
    "PlanId" TEXT NOT NULL,
    "From" TEXT NOT NULL,
    "To" TEXT NOT NULL,
    "Reason" TEXT NOT NULL,
    "At" TEXT NOT NULL,
    "By" TEXT NOT NULL,
    CONSTRAINT "FK_PlanChanges_Plans_PlanId" FOREIGN KEY ("PlanId") REFERENCES "Plans" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "PlanEdits" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_PlanEdits" PRIMARY KEY,
    "PlanId" TEXT NOT NULL,
    "What" TEXT NOT NULL,
    "Original" TEXT NOT NULL,
    "Changed" TEXT NOT NULL,
    "Reason" TEXT NOT NULL,
    "Comment" TEXT NOT NULL,
    "At" TEXT NOT NULL,
    "By" TEXT NOT NULL,
    CONSTRAINT "FK_PlanEdits_Plans_PlanId" FOREIGN KEY ("PlanId") REFERENCES "Plans" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "PlanStages" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_PlanStages" PRIMARY KEY,
    "PlanId" TEXT NOT NULL,
    "Order" INTEGER NOT NULL,
    "Fault" TEXT NOT NULL,
    "Stage" TEXT NOT NULL,
    "Status" TEXT NOT NULL,
    "Drills" TEXT NOT NULL,
    "Gate" TEXT NOT NULL,
    "StartedOn" TEXT NULL,
    "DueOn" TEXT NULL,
    "EndedOn" TEXT NULL,
    CONSTRAINT "FK_PlanStages_Plans_PlanId" FOREIGN KEY ("PlanId") REFERENCES "Plans" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "PrivateLinks" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_PrivateLinks" PRIMARY KEY,
    "TokenSha256" TEXT NOT NULL,
    "StudentId" TEXT NOT NULL,
    "Purpose" TEXT NOT NULL,
    "PlanId" TEXT NULL,
    "Stops" TEXT NULL,
    "IssuedAt" TEXT NOT NULL,
    "ExpiresAt" TEXT NOT NULL,
    "RevokedAt" TEXT NULL,
    "LastOpenedAt" TEXT NULL,
    CONSTRAINT "FK_PrivateLinks_Plans_PlanId" FOREIGN KEY ("PlanId") REFERENCES "Plans" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_PrivateLinks_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "LedgerDocuments" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_LedgerDocuments" PRIMARY KEY,
    "Kind" TEXT NOT NULL,
    "Year" INTEGER NOT NULL,
    "Number" INTEGER NOT NULL,
    "PayerId" TEXT NOT NULL,
    "EntryId" TEXT NULL,
    "IssuedOn" TEXT NOT NULL,
    "At" TEXT NOT NULL,
    "By" TEXT NOT NULL,
    "TotalMinor" INTEGER NOT NULL,
    "Content" TEXT NOT NULL,
    CONSTRAINT "FK_LedgerDocuments_LedgerEntries_EntryId" FOREIGN KEY ("EntryId") REFERENCES "LedgerEntries" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_LedgerDocuments_Payers_PayerId" FOREIGN KEY ("PayerId") REFERENCES "Payers" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "LedgerPostings" (
    "EntryId" TEXT NOT NULL,
    "Line" INTEGER NOT NULL,
    "Account" TEXT NOT NULL,
    "AmountMinor" INTEGER NOT NULL,
    "TaxBasisPoints" INTEGER NULL,
    "Text" TEXT NOT NULL,
    CONSTRAINT "PK_LedgerPostings" PRIMARY KEY ("EntryId", "Line"),
    CONSTRAINT "FK_LedgerPostings_LedgerEntries_EntryId" FOREIGN KEY ("EntryId") REFERENCES "LedgerEntries" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "MailBounces" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_MailBounces" PRIMARY KEY,
    "MessageId" TEXT NOT NULL,
    "StudentId" TEXT NULL,
    "AddressSha256" TEXT NOT NULL,
    "IsHard" INTEGER NOT NULL,
    "Status" TEXT NOT NULL,
    "OnceKey" TEXT NOT NULL,
    "ReceivedAt" TEXT NOT NULL,
    CONSTRAINT "FK_MailBounces_Messages_MessageId" FOREIGN KEY ("MessageId") REFERENCES "Messages" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_MailBounces_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE TABLE "Retests" (
    "Id" TEXT NOT NULL CONSTRAINT "PK_Retests" PRIMARY KEY,
    "PlanId" TEXT NOT NULL,
    "StudentId" TEXT NOT NULL,
    "StageId" TEXT NOT NULL,
    "Fault" TEXT NOT NULL,
    "IsSecondLook" INTEGER NOT NULL,
    "DueOn" TEXT NOT NULL,
    "Status" TEXT NOT NULL,
    "LessonId" TEXT NULL,
    "Answer" TEXT NOT NULL,
    "AnsweredOn" TEXT NULL,
    "AnsweredAt" TEXT NULL,
    "Verdict" TEXT NULL,
    "EndedAt" TEXT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_Retests_Lessons_LessonId" FOREIGN KEY ("LessonId") REFERENCES "Lessons" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Retests_PlanStages_StageId" FOREIGN KEY ("StageId") REFERENCES "PlanStages" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Retests_Plans_PlanId" FOREIGN KEY ("PlanId") REFERENCES "Plans" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Retests_Students_StudentId" FOREIGN KEY ("StudentId") REFERENCES "Students" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_AccountClaims_UserId" ON "AccountClaims" ("UserId");

CREATE INDEX "IX_AccountLogins_UserId" ON "AccountLogins" ("UserId");

CREATE INDEX "IX_AccountPasskeys_UserId" ON "AccountPasskeys" ("UserId");

CREATE INDEX "IX_AccountRoles_RoleId" ON "AccountRoles" ("RoleId");

CREATE INDEX "EmailIndex" ON "Accounts" ("NormalizedEmail");

CREATE UNIQUE INDEX "UserNameIndex" ON "Accounts" ("NormalizedUserName");

CREATE INDEX "IX_AuditEntries_At" ON "AuditEntries" ("At");

CREATE INDEX "IX_AuditEntries_SubjectId" ON "AuditEntries" ("SubjectId");

CREATE INDEX "IX_Bookings_CoachId_Starts" ON "Bookings" ("CoachId", "Starts");

CREATE INDEX "IX_Bookings_HeldUntil" ON "Bookings" ("HeldUntil") WHERE "HeldUntil" IS NOT NULL;

CREATE INDEX "IX_Bookings_OfferingId" ON "Bookings" ("OfferingId");

CREATE INDEX "IX_Bookings_PlaceId" ON "Bookings" ("PlaceId");

CREATE INDEX "IX_Bookings_ResourceId" ON "Bookings" ("ResourceId");

CREATE INDEX "IX_Bookings_SeriesId" ON "Bookings" ("SeriesId");

CREATE INDEX "IX_Bookings_Starts_CoachId" ON "Bookings" ("Starts", "CoachId");

CREATE INDEX "IX_BooksInForce_Edition" ON "BooksInForce" ("Edition");

CREATE INDEX "IX_BooksInForce_Sha256" ON "BooksInForce" ("Sha256");

CREATE INDEX "IX_BroughtStudents_StudentId" ON "BroughtStudents" ("StudentId");

CREATE INDEX "IX_BusyTimes_CoachId_Until_From" ON "BusyTimes" ("CoachId", "Until", "From");

CREATE INDEX "IX_CalendarFeeds_CoachId" ON "CalendarFeeds" ("CoachId");

CREATE INDEX "IX_CalendarFeeds_StudentId" ON "CalendarFeeds" ("StudentId");

CREATE UNIQUE INDEX "IX_CalendarFeeds_TokenSha256" ON "CalendarFeeds" ("TokenSha256");

CREATE INDEX "IX_CheckIns_Emergency_At" ON "CheckIns" ("Emergency", "At") WHERE "Pain" AND "SeenAt" IS NULL;

CREATE INDEX "IX_CheckIns_PlanId_PracticedOn" ON "CheckIns" ("PlanId", "PracticedOn");

CREATE INDEX "IX_CheckIns_PracticedOn_PlanId" ON "CheckIns" ("PracticedOn", "PlanId");

CREATE INDEX "IX_CheckIns_StudentId" ON "CheckIns" ("StudentId");

CREATE INDEX "IX_DeviceFiles_OpenedAt" ON "DeviceFiles" ("OpenedAt");

CREATE UNIQUE INDEX "IX_DeviceFiles_StudentId_ImportedSha256" ON "DeviceFiles" ("StudentId", "ImportedSha256");

CREATE INDEX "IX_GroupMembers_StudentId" ON "GroupMembers" ("StudentId");

CREATE INDEX "IX_HoursExceptions_OpenAt" ON "HoursExceptions" ("OpenAt");

CREATE INDEX "IX_HoursExceptions_Until_From" ON "HoursExceptions" ("Until", "From");

CREATE INDEX "IX_KeptRulebooks_ShippedSha256" ON "KeptRulebooks" ("ShippedSha256");

CREATE UNIQUE INDEX "IX_LedgerDocuments_EntryId" ON "LedgerDocuments" ("EntryId");

CREATE UNIQUE INDEX "IX_LedgerDocuments_Kind_Year_Number" ON "LedgerDocuments" ("Kind", "Year", "Number");

CREATE INDEX "IX_LedgerDocuments_PayerId" ON "LedgerDocuments" ("PayerId");

CREATE INDEX "IX_LedgerEntries_OfferingId" ON "LedgerEntries" ("OfferingId");

CREATE INDEX "IX_LedgerEntries_On" ON "LedgerEntries" ("On");

CREATE INDEX "IX_LedgerEntries_PackageId" ON "LedgerEntries" ("PackageId");

CREATE INDEX "IX_LedgerEntries_PayerId_On" ON "LedgerEntries" ("PayerId", "On");

CREATE UNIQUE INDEX "IX_LedgerEntries_Reverses" ON "LedgerEntries" ("Reverses");

CREATE INDEX "IX_LedgerEntries_SeatId" ON "LedgerEntries" ("SeatId");

CREATE INDEX "IX_LedgerEntries_StudentId" ON "LedgerEntries" ("StudentId");

CREATE INDEX "IX_LedgerPostings_Account_EntryId_AmountMinor" ON "LedgerPostings" ("Account", "EntryId", "AmountMinor");

CREATE INDEX "IX_LessonInputs_StudentId" ON "LessonInputs" ("StudentId");

CREATE INDEX "IX_Lessons_CoachId_CreatedAt" ON "Lessons" ("CoachId", "CreatedAt");

CREATE INDEX "IX_Lessons_HeldOn" ON "Lessons" ("HeldOn");

CREATE INDEX "IX_Lessons_StudentId_HeldOn" ON "Lessons" ("StudentId", "HeldOn");

CREATE INDEX "IX_MailBounces_IsHard" ON "MailBounces" ("IsHard");

CREATE INDEX "IX_MailBounces_MessageId" ON "MailBounces" ("MessageId");

CREATE UNIQUE INDEX "IX_MailBounces_OnceKey" ON "MailBounces" ("OnceKey");

CREATE INDEX "IX_MailBounces_StudentId" ON "MailBounces" ("StudentId");

CREATE INDEX "IX_MediaConsents_StudentId" ON "MediaConsents" ("StudentId");

CREATE INDEX "IX_MediaItems_LessonId" ON "MediaItems" ("LessonId");

CREATE INDEX "IX_MediaItems_Sha256" ON "MediaItems" ("Sha256");

CREATE INDEX "IX_MediaItems_SmallSha256" ON "MediaItems" ("SmallSha256");

CREATE INDEX "IX_MediaItems_StudentId" ON "MediaItems" ("StudentId");

CREATE INDEX "IX_MediaItems_TakeId" ON "MediaItems" ("TakeId");

CREATE UNIQUE INDEX "IX_MessageRules_Kind" ON "MessageRules" ("Kind");

CREATE INDEX "IX_MessageRules_WordingId" ON "MessageRules" ("WordingId");

CREATE INDEX "IX_Messages_Kind_State_DueAt_PlanId" ON "Messages" ("Kind", "State", "DueAt", "PlanId");

CREATE UNIQUE INDEX "IX_Messages_OnceKey" ON "Messages" ("OnceKey");

CREATE INDEX "IX_Messages_PlanId_Kind_State_SentAt" ON "Messages" ("PlanId", "Kind", "State", "SentAt");

CREATE INDEX "IX_Messages_State_Attempts_DueAt_Id" ON "Messages" ("State", "Attempts", "DueAt", "Id");

CREATE INDEX "IX_Messages_State_DueAt" ON "Messages" ("State", "DueAt");

CREATE INDEX "IX_Messages_StudentId" ON "Messages" ("StudentId");

CREATE INDEX "IX_MessageWordings_Kind_WrittenAt" ON "MessageWordings" ("Kind", "WrittenAt");

CREATE UNIQUE INDEX "IX_MoneyTerms_Only" ON "MoneyTerms" ("Only");

CREATE INDEX "IX_Packages_OfferId" ON "Packages" ("OfferId");

CREATE INDEX "IX_Packages_PayerId" ON "Packages" ("PayerId");

CREATE INDEX "IX_Packages_StudentId" ON "Packages" ("StudentId");

CREATE INDEX "IX_Packages_ValidUntil" ON "Packages" ("ValidUntil");

CREATE INDEX "IX_Payers_Name_Id" ON "Payers" ("Name", "Id");

CREATE INDEX "IX_PlanChanges_PlanId" ON "PlanChanges" ("PlanId");

CREATE INDEX "IX_PlanEdits_PlanId" ON "PlanEdits" ("PlanId");

CREATE INDEX "IX_Plans_DraftId" ON "Plans" ("DraftId");

CREATE INDEX "IX_Plans_LessonId" ON "Plans" ("LessonId");

CREATE INDEX "IX_Plans_Status" ON "Plans" ("Status");

CREATE INDEX "IX_Plans_StudentId" ON "Plans" ("StudentId");

CREATE INDEX "IX_PlanStages_PlanId" ON "PlanStages" ("PlanId");

CREATE UNIQUE INDEX "IX_Practices_Only" ON "Practices" ("Only");

CREATE INDEX "IX_PrivateLinks_PlanId" ON "PrivateLinks" ("PlanId");

CREATE INDEX "IX_PrivateLinks_StudentId" ON "PrivateLinks" ("StudentId");

CREATE UNIQUE INDEX "IX_PrivateLinks_TokenSha256" ON "PrivateLinks" ("TokenSha256");

CREATE INDEX "IX_Readings_LessonId" ON "Readings" ("LessonId");

CREATE INDEX "IX_Readings_Measure_Value_LessonId" ON "Readings" ("Measure", "Value", "LessonId");

CREATE INDEX "IX_Readings_TakeId" ON "Readings" ("TakeId");

CREATE INDEX "IX_ReadingSheets_Owner" ON "ReadingSheets" ("Owner");

CREATE INDEX "IX_RemoteReviews_LessonId" ON "RemoteReviews" ("LessonId");

CREATE INDEX "IX_RemoteReviews_OfferingId" ON "RemoteReviews" ("OfferingId");

CREATE INDEX "IX_RemoteReviews_Status_PromisedBy" ON "RemoteReviews" ("Status", "PromisedBy");

CREATE INDEX "IX_RemoteReviews_StudentId" ON "RemoteReviews" ("StudentId");

CREATE INDEX "IX_Resources_PlaceId" ON "Resources" ("PlaceId");

CREATE INDEX "IX_Retests_LessonId" ON "Retests" ("LessonId");

CREATE INDEX "IX_Retests_PlanId" ON "Retests" ("PlanId");

CREATE INDEX "IX_Retests_StageId" ON "Retests" ("StageId");

CREATE INDEX "IX_Retests_Status_DueOn" ON "Retests" ("Status", "DueOn");

CREATE INDEX "IX_Retests_StudentId" ON "Retests" ("StudentId");

CREATE INDEX "IX_ReviewClips_ReviewId" ON "ReviewClips" ("ReviewId");

CREATE INDEX "IX_ReviewClips_Sha256" ON "ReviewClips" ("Sha256");

CREATE INDEX "IX_RoleClaims_RoleId" ON "RoleClaims" ("RoleId");

CREATE UNIQUE INDEX "RoleNameIndex" ON "Roles" ("NormalizedName");

CREATE INDEX "IX_RulebookEditions_Sha256" ON "RulebookEditions" ("Sha256");

CREATE INDEX "IX_RulebookEditions_ShippedSha256" ON "RulebookEditions" ("ShippedSha256");

CREATE INDEX "IX_SafetyCopies_At" ON "SafetyCopies" ("At");

CREATE INDEX "IX_Seats_BookingId" ON "Seats" ("BookingId");

CREATE INDEX "IX_Seats_HeldUntil" ON "Seats" ("HeldUntil") WHERE "HeldUntil" IS NOT NULL;

CREATE INDEX "IX_Seats_PackageId" ON "Seats" ("PackageId") WHERE "PackageId" IS NOT NULL;

CREATE INDEX "IX_Seats_StudentId" ON "Seats" ("StudentId");

CREATE INDEX "IX_SecondReadings_LessonId" ON "SecondReadings" ("LessonId");

CREATE INDEX "IX_SecondReadings_ReadAt" ON "SecondReadings" ("ReadAt");

CREATE INDEX "IX_SecondReadings_TakeId" ON "SecondReadings" ("TakeId");

CREATE INDEX "IX_SheetSends_At" ON "SheetSends" ("At");

CREATE INDEX "IX_SheetSends_LessonId" ON "SheetSends" ("LessonId");

CREATE INDEX "IX_StoredDrafts_LessonId" ON "StoredDrafts" ("LessonId");

CREATE INDEX "IX_StoredDrafts_RulebookSha256" ON "StoredDrafts" ("RulebookSha256");

CREATE INDEX "IX_StoredDrafts_StudentId" ON "StoredDrafts" ("StudentId");

CREATE UNIQUE INDEX "IX_StudentFiles_BroughtSha256" ON "StudentFiles" ("BroughtSha256");

CREATE INDEX "IX_StudentFiles_OpenedAt" ON "StudentFiles" ("OpenedAt");

CREATE INDEX "IX_Students_ArchivedAt" ON "Students" ("ArchivedAt");

CREATE INDEX "IX_Students_ArchivedAt_SearchText_Id" ON "Students" ("ArchivedAt", "SearchText", "Id");

CREATE INDEX "IX_Students_MergedInto" ON "Students" ("MergedInto");

CREATE INDEX "IX_Students_PayerId" ON "Students" ("PayerId");

CREATE INDEX "IX_TakenTimes_BookingId" ON "TakenTimes" ("BookingId");

CREATE INDEX "IX_TakenTimes_Holder_From_Until" ON "TakenTimes" ("Holder", "From", "Until");

CREATE UNIQUE INDEX "IX_Takes_LessonId_View_Swing" ON "Takes" ("LessonId", "View", "Swing");

CREATE UNIQUE INDEX "IX_Travels_OnePlace_OtherPlace" ON "Travels" ("OnePlace", "OtherPlace");

CREATE INDEX "IX_Travels_OtherPlace" ON "Travels" ("OtherPlace");

CREATE INDEX "IX_WaitingPlaces_BookingId" ON "WaitingPlaces" ("BookingId");

CREATE INDEX "IX_WaitingPlaces_OfferedSeat" ON "WaitingPlaces" ("OfferedSeat");

CREATE INDEX "IX_WaitingPlaces_OfferingId" ON "WaitingPlaces" ("OfferingId");

CREATE INDEX "IX_WaitingPlaces_Status_JoinedAt" ON "WaitingPlaces" ("Status", "JoinedAt");

CREATE INDEX "IX_WaitingPlaces_StudentId" ON "WaitingPlaces" ("StudentId");

CREATE INDEX "IX_WeeklyHours_CoachId" ON "WeeklyHours" ("CoachId");

CREATE INDEX "IX_WeeklyHours_PlaceId" ON "WeeklyHours" ("PlaceId");

INSERT INTO "__EFMigrationsHistory" ("MigrationId", "ProductVersion")
VALUES ('20261127174623_FirstOrder', '10.0.15');

COMMIT;

