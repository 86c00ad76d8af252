using CoachOffice.Domain.Bookings;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace CoachOffice.Data.Bookings;

internal sealed class BookingTermsMapping : IEntityTypeConfiguration<BookingTerms>
{
    public void Configure(EntityTypeBuilder<BookingTerms> builder)
    {
        builder.ToTable("BookingTerms");
    }
}
