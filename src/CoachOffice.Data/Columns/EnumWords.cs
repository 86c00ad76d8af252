using CoachOffice.Domain;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace CoachOffice.Data.Columns;

/// <summary>A member of a closed list is stored as its kebab word, so that a row reads like a sentence and a list may be re-ordered.</summary>
internal sealed class EnumWords<T>() : ValueConverter<T, string>(member => Terms.Of(member), word => Terms.Parse<T>(word))
    where T : struct, Enum;
