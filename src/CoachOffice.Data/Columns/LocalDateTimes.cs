using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.Data.Columns;

/// <summary>A wall-clock time without a zone is stored as ISO text: both databases would otherwise give it an offset of their own.</summary>
internal sealed class LocalDateTimes() : ValueConverter<LocalDateTime, string>(
    time => LocalDateTimePattern.GeneralIso.Format(time),
    stored => LocalDateTimePattern.GeneralIso.Parse(stored).GetValueOrThrow());
