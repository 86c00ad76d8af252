namespace CoachOffice.UseCases.Tests.Fixtures;

public sealed class PostgreSqlOffice(Templates templates) : OfficeFixture(templates.PostgreSql);
