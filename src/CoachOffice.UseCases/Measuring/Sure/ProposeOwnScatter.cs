using System.Globalization;
using System.Text.RegularExpressions;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Rulebook;

namespace CoachOffice.UseCases.Measuring.Sure;

/// <summary>
/// Puts the practice's own scatter of a swing in place of the rulebook's, as a change of the rulebook that waits to be put into force: it can be compared and taken back like any other,
/// and the history keeps the old value. Only the swing's part changes, for that is what several swings of a lesson tell.
/// </summary>
public sealed partial class ProposeOwnScatter(ReadHowSure sure, OpenEntry open, KeepChange keep)
{
    /// <summary>The kept change, or why not.</summary>
    public async Task<Outcome<KeptChange>> Of(MeasureId measure, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayChangeRules) return NotAllowed.To("change the rulebook");
        var known = (await sure.Now(stop)).FirstOrDefault(s => s.Measure.Id == measure);
        if (known is null) return new Refusal("measure-not-found", $"The rulebook has no measure '{measure.Value}' with a reading error of its own.");
        if (known.OwnScatter is not { } own)
            return new Refusal("too-few-pairs", $"{known.Measure.Name}: there are fewer than {SwingStudy.EnoughPairs} pairs of swings yet, so the rulebook's value stays.");
        var desk = await open.Of(EntryId.Of(measure), actor, stop);
        if (!desk.TryGet(out var entry)) return Outcome<KeptChange>.Refused(desk.Refusals);
        var number = own.Value.ToString("0.##", CultureInfo.InvariantCulture);
        var text = SwingPart().Replace(entry.Text ?? "", m => m.Groups["before"].Value + number, 1);
        return await keep.Of(new WorkForm(entry.Edition, [new EntryEdit(EntryId.Of(measure), EntryDeed.Write, text)]), actor, stop);
    }

    // The measure's text as the rulebook writes it: error: { setup: 1.5, swing: 2.5 }, on one line or three.
    [GeneratedRegex(@"(?<before>error:\s*(?:\{\s*)?setup:\s*[0-9.]+\s*,?\s*swing:\s*)[0-9.]+", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex SwingPart();
}
