using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Access;

internal sealed class AccountMapping : IEntityTypeConfiguration<Account>
{
    public void Configure(EntityTypeBuilder<Account> builder)
    {
        builder.ToTable("Accounts");
        builder.Property(a => a.DisplayName).HasMaxLength(120);
        builder.Property(a => a.Zone).HasMaxLength(64);
        builder.Ignore(a => a.AccountId);
    }
}
