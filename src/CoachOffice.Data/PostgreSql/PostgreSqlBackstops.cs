namespace CoachOffice.Data.PostgreSql;

/// <summary>What the database itself refuses, should the program ever forget. Names begin with <c>Keep_</c>.</summary>
internal static class PostgreSqlBackstops
{
    // Whose draft or entry it is changes when two records of one student become one, and nothing else of it: an entry only from a record to the one that took it in.
    public const string Sql = """
        CREATE OR REPLACE FUNCTION "Keep_refuse"() RETURNS trigger LANGUAGE plpgsql AS
        $refuse$ BEGIN RAISE EXCEPTION '%', TG_ARGV[0] USING ERRCODE = 'integrity_constraint_violation'; END $refuse$;
        CREATE OR REPLACE TRIGGER "Keep_AuditEntries" BEFORE UPDATE OR DELETE ON "AuditEntries"
        FOR EACH ROW EXECUTE FUNCTION "Keep_refuse"('audit entries never change');
        CREATE OR REPLACE TRIGGER "Keep_KeptRulebooks" BEFORE UPDATE OR DELETE ON "KeptRulebooks"
        FOR EACH ROW EXECUTE FUNCTION "Keep_refuse"('kept rulebooks never change');
        CREATE OR REPLACE TRIGGER "Keep_ShippedBooks" BEFORE UPDATE OR DELETE ON "ShippedBooks"
        FOR EACH ROW EXECUTE FUNCTION "Keep_refuse"('shipped rulebooks never change');
        CREATE OR REPLACE TRIGGER "Keep_RulebookEditions" BEFORE UPDATE OR DELETE ON "RulebookEditions"
        FOR EACH ROW EXECUTE FUNCTION "Keep_refuse"('editions of the rulebook never change');
        CREATE OR REPLACE FUNCTION "Keep_entry"() RETURNS trigger LANGUAGE plpgsql AS
        $entry$ BEGIN
        IF TG_OP = 'UPDATE' AND to_jsonb(NEW) - 'StudentId' = to_jsonb(OLD) - 'StudentId'
            AND EXISTS (SELECT 1 FROM "Students" AS s WHERE s."Id" = OLD."StudentId" AND s."MergedInto" = NEW."StudentId") THEN RETURN NEW; END IF;
        RAISE EXCEPTION '%', TG_ARGV[0] USING ERRCODE = 'integrity_constraint_violation'; END $entry$;
        CREATE OR REPLACE TRIGGER "Keep_LedgerEntries" BEFORE UPDATE OR DELETE ON "LedgerEntries"
        FOR EACH ROW EXECUTE FUNCTION "Keep_entry"('entries of the ledger never change, another one takes them back');
        CREATE OR REPLACE TRIGGER "Keep_LedgerPostings" BEFORE UPDATE OR DELETE ON "LedgerPostings"
        FOR EACH ROW EXECUTE FUNCTION "Keep_refuse"('entries of the ledger never change, another one takes them back');
        CREATE OR REPLACE TRIGGER "Keep_LedgerDocuments" BEFORE UPDATE OR DELETE ON "LedgerDocuments"
        FOR EACH ROW EXECUTE FUNCTION "Keep_refuse"('receipts and statements never change');
        CREATE OR REPLACE TRIGGER "Keep_StoredDrafts" BEFORE UPDATE OF "Id", "LessonId", "Json", "InputJson", "InputSha256", "RulebookSha256", "Engine", "MadeAt", "MadeBy" ON "StoredDrafts"
        FOR EACH ROW WHEN (NEW."Json" <> '') EXECUTE FUNCTION "Keep_refuse"('stored drafts never change, they can only be emptied');
        CREATE OR REPLACE TRIGGER "Keep_TakenTimes" BEFORE UPDATE ON "TakenTimes"
        FOR EACH ROW EXECUTE FUNCTION "Keep_refuse"('taken times never change, they go and come');
        CREATE EXTENSION IF NOT EXISTS btree_gist;
        DO $exclusion$ BEGIN
        IF NOT EXISTS (SELECT 1 FROM pg_constraint WHERE conname = 'Keep_TakenTimes_apart') THEN
        ALTER TABLE "TakenTimes" ADD CONSTRAINT "Keep_TakenTimes_apart" EXCLUDE USING gist ("Holder" WITH =, tstzrange("From", "Until", '[)') WITH &&), ADD CONSTRAINT "Keep_TakenTimes_span" CHECK ("Until" > "From");
        END IF; END $exclusion$;
        """;
}
