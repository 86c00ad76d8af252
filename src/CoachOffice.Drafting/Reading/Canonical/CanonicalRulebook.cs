using CoachOffice.Domain;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Reading.Canonical;

/// <summary>The one written form of a rulebook's meaning, and the hash that names it.</summary>
public static class CanonicalRulebook
{
    /// <summary>RFC 8785 JSON of everything the rulebook says; comments, layout, order of entries and files leave no trace in it.</summary>
    public static byte[] Write(Rulebook book) => CanonicalJson.Write(PlainTree.Of(book));

    /// <summary>SHA-256 of the canonical form, lower-case hexadecimal.</summary>
    public static string Sha256(Rulebook book) => CanonicalJson.Sha256(PlainTree.Of(book));
}
