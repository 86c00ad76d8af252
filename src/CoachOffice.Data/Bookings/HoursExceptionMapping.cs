using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class HoursExceptionMapping : IEntityTypeConfiguration<HoursException>
{
    public void Configure(EntityTypeBuilder<HoursException> builder)
    {
        builder.ToTable("HoursExceptions");
        builder.Property(e => e.Note).HasMaxLength(200);
        builder.HasOne<Place>().WithMany().HasForeignKey(e => e.OpenAt);
        builder.HasIndex(e => new { e.Until, e.From });
    }
}
