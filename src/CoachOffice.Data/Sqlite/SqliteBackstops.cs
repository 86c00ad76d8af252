namespace CoachOffice.Data.Sqlite;

/// <summary>What the database itself refuses, should the program ever forget. Names begin with <c>Keep_</c>.</summary>
internal static class SqliteBackstops
{
    // Whose draft or entry it is changes when two records of one student become one, and nothing else of it: an entry only from a record to the one that took it in.
    public const string Sql = """
        CREATE TRIGGER IF NOT EXISTS "Keep_AuditEntries_update" BEFORE UPDATE ON "AuditEntries"
        BEGIN SELECT RAISE(ABORT, 'audit entries never change'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_AuditEntries_delete" BEFORE DELETE ON "AuditEntries"
        BEGIN SELECT RAISE(ABORT, 'audit entries never change'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_KeptRulebooks_update" BEFORE UPDATE ON "KeptRulebooks"
        BEGIN SELECT RAISE(ABORT, 'kept rulebooks never change'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_KeptRulebooks_delete" BEFORE DELETE ON "KeptRulebooks"
        BEGIN SELECT RAISE(ABORT, 'kept rulebooks never change'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_ShippedBooks_update" BEFORE UPDATE ON "ShippedBooks"
        BEGIN SELECT RAISE(ABORT, 'shipped rulebooks never change'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_ShippedBooks_delete" BEFORE DELETE ON "ShippedBooks"
        BEGIN SELECT RAISE(ABORT, 'shipped rulebooks never change'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_RulebookEditions_update" BEFORE UPDATE ON "RulebookEditions"
        BEGIN SELECT RAISE(ABORT, 'editions of the rulebook never change'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_RulebookEditions_delete" BEFORE DELETE ON "RulebookEditions"
        BEGIN SELECT RAISE(ABORT, 'editions of the rulebook never change'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_LedgerEntries_update" BEFORE UPDATE ON "LedgerEntries"
        WHEN (NEW."Id", NEW."At", NEW."On", NEW."Kind", NEW."PayerId", NEW."OfferingId", NEW."CoachId", NEW."SeatId", NEW."PackageId", NEW."Reverses", NEW."Method", NEW."Reference", NEW."Text", NEW."By")
            IS NOT (OLD."Id", OLD."At", OLD."On", OLD."Kind", OLD."PayerId", OLD."OfferingId", OLD."CoachId", OLD."SeatId", OLD."PackageId", OLD."Reverses", OLD."Method", OLD."Reference", OLD."Text", OLD."By")
            OR NOT EXISTS (SELECT 1 FROM "Students" AS s WHERE s."Id" = OLD."StudentId" AND s."MergedInto" = NEW."StudentId")
        BEGIN SELECT RAISE(ABORT, 'entries of the ledger never change, another one takes them back'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_LedgerEntries_delete" BEFORE DELETE ON "LedgerEntries"
        BEGIN SELECT RAISE(ABORT, 'entries of the ledger never change, another one takes them back'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_LedgerPostings_update" BEFORE UPDATE ON "LedgerPostings"
        BEGIN SELECT RAISE(ABORT, 'entries of the ledger never change, another one takes them back'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_LedgerPostings_delete" BEFORE DELETE ON "LedgerPostings"
        BEGIN SELECT RAISE(ABORT, 'entries of the ledger never change, another one takes them back'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_LedgerDocuments_update" BEFORE UPDATE ON "LedgerDocuments"
        BEGIN SELECT RAISE(ABORT, 'receipts and statements never change'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_LedgerDocuments_delete" BEFORE DELETE ON "LedgerDocuments"
        BEGIN SELECT RAISE(ABORT, 'receipts and statements never change'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_StoredDrafts_update" BEFORE UPDATE OF "Id", "LessonId", "Json", "InputJson", "InputSha256", "RulebookSha256", "Engine", "MadeAt", "MadeBy" ON "StoredDrafts"
        WHEN NEW."Json" <> ''
        BEGIN SELECT RAISE(ABORT, 'stored drafts never change, they can only be emptied'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_TakenTimes_insert" BEFORE INSERT ON "TakenTimes"
        WHEN NEW."Until" <= NEW."From" OR EXISTS (
            SELECT 1 FROM "TakenTimes" AS t
            WHERE t."Holder" = NEW."Holder" AND t."From" < NEW."Until" AND t."From" > strftime('%Y-%m-%d %H:%M:%f', NEW."From", '-16 hours') AND t."Until" > NEW."From")
        BEGIN SELECT RAISE(ABORT, 'time_taken'); END;
        CREATE TRIGGER IF NOT EXISTS "Keep_TakenTimes_update" BEFORE UPDATE ON "TakenTimes"
        BEGIN SELECT RAISE(ABORT, 'taken times never change, they go and come'); END;
        """;
}
