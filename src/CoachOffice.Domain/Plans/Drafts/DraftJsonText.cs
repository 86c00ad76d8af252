using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans.Drafts;

/// <summary>Writes one draft, key by key in the order of the written form.</summary>
internal sealed class DraftJsonText
{
    private readonly JsonText _json = new();

    public string Write(Draft draft)
    {
        _json.Object(null, () => Members(draft));
        return _json.ToString();
    }

    private void Members(Draft draft)
    {
        _json.Object("rulebook", () =>
        {
            _json.Text("name", draft.Rulebook.Name);
            _json.Text("sha256", draft.Rulebook.Sha256);
        });
        _json.Text("engine", draft.Engine);
        _json.Text("input", draft.Input);
        Objects("findings", draft.Findings, Finding);
        Objects("causes", draft.Causes, Cause);
        Objects("focus", draft.Focus, Focus);
        Objects("parked", draft.Parked, Parked);
        Objects("stages", draft.Stages, Stage);
        Objects("withheld", draft.Withheld, Withheld);
        Objects("measureNext", draft.MeasureNext, Next);
        Texts("strengths", draft.Strengths);
        Objects("cautions", draft.Cautions, Caution);
        Objects("trace", draft.Trace, Trace);
    }

    private void Objects<T>(string key, IReadOnlyList<T> items, Action<T> members) => _json.Array(key, items, item => _json.Object(null, () => members(item)));

    private void Texts(string key, IReadOnlyList<string> items) => _json.Array(key, items, item => _json.Text(null, item));

    private void Faults(string key, IReadOnlyList<FaultId> faults) => Texts(key, [.. faults.Select(f => f.ToString())]);

    private void Finding(DraftFinding finding)
    {
        _json.Text("measure", finding.Measure);
        _json.Text("side", Terms.Of(finding.Side));
        _json.Text("grade", Terms.Of(finding.Grade));
        _json.Number("value", finding.Value);
        _json.Text("unit", finding.Unit);
        _json.Number("standardError", finding.StandardError, 3);
        _json.Array<double?>("range", [finding.RangeLow, finding.RangeHigh], edge => _json.Number(null, edge));
        _json.Number("outsideBy", finding.OutsideBy, 3);
        _json.Number("chanceOutside", finding.ChanceOutside, 4);
    }

    private void Cause(DraftCause cause)
    {
        _json.Text("pattern", cause.Pattern);
        _json.Text("root", cause.Root.ToString());
        Faults("explains", cause.Explains);
        _json.Text("because", cause.Because);
    }

    private void Focus(DraftFocus focus)
    {
        _json.Number("order", focus.Order);
        _json.Text("fault", focus.Fault.ToString());
        _json.Text("pattern", focus.Pattern);
        _json.Text("because", focus.Because);
        Faults("after", focus.After);
    }

    private void Parked(DraftParked parked)
    {
        _json.Text("fault", parked.Fault.ToString());
        _json.Text("reason", Terms.Of(parked.Reason));
        _json.Text("by", parked.By?.ToString());
    }

    private void Stage(DraftStage stage)
    {
        _json.Text("fault", stage.Fault.ToString());
        _json.Text("stage", Terms.Of(stage.Stage));
        Objects("drills", stage.Drills, Drill);
        _json.Object("gate", () => Gate(stage.Gate));
    }

    private void Drill(DraftDrill drill)
    {
        _json.Text("drill", drill.Drill);
        _json.Text("name", drill.Name);
        _json.Number("sets", drill.Sets);
        _json.Number("reps", drill.Reps);
        _json.Number("sessionsPerWeek", drill.SessionsPerWeek);
        _json.Number("minutesPerSession", drill.MinutesPerSession);
        _json.Text("cue", drill.Cue);
    }

    private void Gate(DraftGate gate)
    {
        _json.Text("kind", Terms.Of(gate.Kind));
        _json.Text("measure", gate.Measure);
        _json.Number("atLeast", gate.AtLeast);
        _json.Number("atMost", gate.AtMost);
        _json.Number("readings", gate.Readings);
        _json.Text("text", gate.Text);
    }

    private void Withheld(DraftWithheld withheld)
    {
        _json.Text("drill", withheld.Drill);
        _json.Text("reason", Terms.Of(withheld.Reason));
        _json.Text("detail", withheld.Detail);
    }

    private void Next(DraftMeasureNext next)
    {
        _json.Text("measure", next.Measure);
        _json.Text("because", next.Because);
    }

    private void Caution(DraftCaution caution)
    {
        _json.Text("id", caution.Id);
        _json.Text("text", caution.Text);
    }

    private void Trace(DraftTrace step)
    {
        _json.Text("rule", step.Rule);
        Texts("facts", step.Facts);
    }
}
