namespace CoachOffice.Domain.Measuring;

/// <summary>The six intraclass correlations of Shrout and Fleiss (1979): who read whom, and whether one reading or a mean of all readers' is meant.</summary>
public enum IccForm
{
    /// <summary>ICC(1,1): every target by other readers; one reading.</summary>
    OneWaySingle,

    /// <summary>ICC(2,1): all targets by the same readers, who stand for any; one reading, readers' own bias counting as error.</summary>
    AgreementSingle,

    /// <summary>ICC(3,1): all targets by the same readers, who stand for themselves; one reading.</summary>
    ConsistencySingle,

    /// <summary>ICC(1,k): the mean of k readings of the first kind.</summary>
    OneWayMean,

    /// <summary>ICC(2,k): the mean of k readers of the second kind.</summary>
    AgreementMean,

    /// <summary>ICC(3,k): the mean of k readers of the third kind.</summary>
    ConsistencyMean,
}
