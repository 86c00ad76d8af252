using System.Text;

namespace CoachOffice.Domain.Plans.Drafts;

/// <summary>The draft's one written form: UTF-8 without a byte order mark, LF, two spaces, keys in a fixed order, numbers without exponent, everything that is not ASCII as itself.</summary>
public static class DraftJson
{
    /// <summary>The bytes of a draft; the same draft always gives the same bytes.</summary>
    public static byte[] Write(Draft draft) => Encoding.UTF8.GetBytes(Text(draft));

    /// <summary>The same as text, ending with a line feed.</summary>
    public static string Text(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return new DraftJsonText().Write(draft);
    }

    /// <summary>Reads a stored draft back. What is not a draft's written form throws <see cref="FormatException"/>.</summary>
    public static Draft Read(string json) => DraftJsonReader.Read(json);
}
