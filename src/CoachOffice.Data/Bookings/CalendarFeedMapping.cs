using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class CalendarFeedMapping : IEntityTypeConfiguration<CalendarFeed>
{
    public void Configure(EntityTypeBuilder<CalendarFeed> builder)
    {
        builder.ToTable("CalendarFeeds");
        builder.Property(f => f.TokenSha256).HasMaxLength(64);
        builder.HasIndex(f => f.TokenSha256).IsUnique();
        builder.HasIndex(f => f.CoachId);
        builder.HasOne<Student>().WithMany().HasForeignKey(f => f.StudentId);
    }
}
