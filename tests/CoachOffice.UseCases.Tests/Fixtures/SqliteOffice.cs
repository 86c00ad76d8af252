namespace CoachOffice.UseCases.Tests.Fixtures;

public sealed class SqliteOffice(Templates templates) : OfficeFixture(templates.Sqlite);
