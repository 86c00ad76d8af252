using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>The mapping a coach of the practice made for files with these column names; the next file with the same names is read by it.</summary>
public sealed class RememberedColumns
{
    private RememberedColumns()
    {
    }

    /// <summary>Hash of the names of the columns, in their order and without case.</summary>
    public string HeaderSha256 { get; private set; } = "";

    public ColumnMapping Mapping { get; private set; } = new();

    /// <summary>Who said it last.</summary>
    public AccountId By { get; private set; }

    public Instant At { get; private set; }

    /// <summary>For column names not seen before.</summary>
    public static RememberedColumns Of(string headerSha256) => new() { HeaderSha256 = headerSha256 };

    /// <summary>This is how they are read from now on.</summary>
    public void Say(ColumnMapping mapping, AccountId by, Instant now) => (Mapping, By, At) = (mapping, by, now);
}
