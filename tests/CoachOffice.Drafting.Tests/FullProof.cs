namespace CoachOffice.Drafting.Tests;

/// <summary>Proofs that take minutes run in a short form unless COACHOFFICE_FULL_PROOF=1 is set.</summary>
internal static class FullProof
{
    public static bool IsOn => Environment.GetEnvironmentVariable("COACHOFFICE_FULL_PROOF") == "1";

    /// <summary>COACHOFFICE_FULL_PROOF=0: the least of them, for runs that repeat the suite once for every changed line.</summary>
    public static bool IsShort => Environment.GetEnvironmentVariable("COACHOFFICE_FULL_PROOF") == "0";
}
