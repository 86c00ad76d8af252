namespace CoachOffice.UseCases.Plans;

/// <summary>Signs with which nobody waits for a coach's answer. A list for a form, never a diagnosis.</summary>
public enum EmergencySign
{
    Numbness,
    BladderOrBowel,
    LegWeakness,
    ChestPain,
    BreathingTrouble,
    FaceDroopOrSpeech,
    HeadHitAndOut,
    HeadHitAndSick,
    HeatCollapse,
    EyeHit,
}

/// <summary>The signs in words of the form.</summary>
public static class EmergencySigns
{
    /// <summary>The words for one sign.</summary>
    public static string InWords(EmergencySign sign) => sign switch
    {
        EmergencySign.Numbness => "Numbness",
        EmergencySign.BladderOrBowel => "Loss of bladder or bowel control",
        EmergencySign.LegWeakness => "Weakness in a leg",
        EmergencySign.ChestPain => "Chest pain",
        EmergencySign.BreathingTrouble => "Trouble breathing",
        EmergencySign.FaceDroopOrSpeech => "A drooping face or trouble speaking",
        EmergencySign.HeadHitAndOut => "A blow to the head and a loss of consciousness",
        EmergencySign.HeadHitAndSick => "Vomiting or confusion after a blow to the head",
        EmergencySign.HeatCollapse => "Collapse in the heat",
        EmergencySign.EyeHit => "An eye hit by a ball",
        _ => throw new ArgumentOutOfRangeException(nameof(sign)),
    };
}
