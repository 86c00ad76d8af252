using System.Text.Json;

namespace CoachOffice.Browser.Tests.Lessons;

/// <summary>The sheet under a thumb: one swing at a time, read from the ground or not, graded by the device as the office would.</summary>
public sealed class OneSwingAtATimeTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task Swings_are_typed_one_at_a_time_and_sent_as_one()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        var lesson = await coach.Begins();
        await window.LookAt("tee-empty");

        await coach.TypesTilt("14");
        await coach.Taps("Another swing");
        Assert.Equal("", await coach.Shown());
        await coach.Taps("Another swing");
        await coach.TypesTilt("31");
        await coach.Taps("Swing 1");
        Assert.Equal(("14", "14 - 31"), (await coach.Shown(), await coach.Whole()));
        await ReadsFromTheGround(coach);
        await coach.Taps("Swing 1");
        await coach.Type("readings[impact-shaft-lean]", "3 4 5");
        Assert.Equal(("3", "3 4 5"), (await coach.Shown("impact-shaft-lean"), await coach.Whole("impact-shaft-lean")));
        await coach.Hears("Worth reading next");
        await window.LookAt("tee-three-swings");
        await coach.Press("Save");

        await coach.Sees("The lesson is saved.");
        Assert.Equal("14 12 - 31", await coach.Whole());
        await LooksAtTheRest(coach, lesson);
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task Dozens_of_balls_are_picked_from_a_list()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        await coach.Begins();

        await coach.Type("readings[club-path]", string.Join(' ', Enumerable.Range(1, 24)));
        await coach.Page.SelectAsync(".swings select", "22");

        Assert.Equal(("23", string.Join(' ', Enumerable.Range(1, 24))), (await coach.Shown("club-path"), await coach.Whole("club-path")));
        await window.LookAt("tee-many-swings");
    }

    [Fact]
    public async Task The_device_grades_as_the_office_does()
    {
        await using var office = new RunningOffice();
        await using var window = await chromium.Open();
        var coach = new Person(window, office.Url);
        await coach.Begins();

        // Every field of the sheet gets one to three values spread widely about its band, forty times; seeded, so that a failure comes again.
        var differences = await coach.Page.EvaluateFunctionAsync<JsonElement>(
            """
            async () => {
              const { bandOf, gradeHere, gradeMark } = await import('/js/grade-here.js');
              const sheet = document.getElementById('sheet');
              let seed = 7;
              const random = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
              const rows = [...sheet.querySelectorAll('[data-band]')];
              const differences = [];
              let compared = 0;
              for (let round = 0; round < 40; round++) {
                const eye = round % 4 === 3;
                const form = new FormData(sheet);
                const asked = rows.map(row => {
                  const band = bandOf(row.dataset.band);
                  const step = (band.step ?? 1) / band.own;
                  const middle = ((band.low ?? band.high ?? 0) + (band.high ?? band.low ?? 0)) / 2 / band.own;
                  const half = band.low !== null && band.high !== null ? (band.high - band.low) / 2 / band.own : step;
                  const values = Array.from({ length: 1 + Math.floor(random() * 3) }, () => Math.round((middle + (random() - .5) * 2 * (half + 4 * step)) * 100) / 100);
                  form.set(`readings[${row.dataset.measure}]`, values.join(' '));
                  if (eye) form.set(`instruments[${row.dataset.measure}]`, 'eye');
                  return { row, band, values };
                });
                const answer = await fetch(sheet.dataset.grade, { method: 'POST', body: form });
                const office = new DOMParser().parseFromString(await answer.text(), 'text/html');
                for (const { row, band, values } of asked) {
                  const said = office.querySelector(`[data-grade-of="${row.dataset.measure}"] .grade`)?.textContent;
                  if (!said) continue;
                  compared++;
                  const here = gradeMark(gradeHere(band, values, { eye, frames: null })).textContent;
                  if (here !== said) differences.push(`${row.dataset.measure} ${values.join(' ')}: office ${said}, device ${here}`);
                }
              }
              return { compared, differences };
            }
            """);

        Assert.Equal([], differences.GetProperty("differences").EnumerateArray().Select(d => d.GetString()));
        Assert.True(differences.GetProperty("compared").GetInt32() > 1000, $"only {differences.GetProperty("compared")} compared");
    }

    // 102 read from the ground on the target side is a tilt of 12 (common practice, no source).
    private static async Task ReadsFromTheGround(Person coach)
    {
        await coach.Taps("Swing 2");
        await coach.TypesTilt("102");
        await coach.Page.EvaluateExpressionAsync($"document.querySelector(`[data-measure='{Tee.Tilt}'] input[type=checkbox]`).click()");
        Assert.Equal(("102", "14 12 31"), (await coach.Shown(), await coach.Whole()));
        await coach.Taps("Swing 3");
        Assert.Equal("121", await coach.Shown());
        await coach.TypesTilt("");
        await coach.Taps("Another swing");
        await coach.TypesTilt("121");
        await coach.Page.EvaluateExpressionAsync($"document.querySelector(`[data-measure='{Tee.Tilt}'] input[type=checkbox]`).click()");
        Assert.Equal(("31", "14 12 - 31"), (await coach.Shown(), await coach.Whole()));
    }

    private static async Task LooksAtTheRest(Person coach, string lesson)
    {
        await coach.GoTo(await coach.Page.EvaluateExpressionAsync<string>("document.querySelector('#takes a').getAttribute('href')"));
        await coach.Window.LookAt("take");
        await coach.Press("Have it read again");
        await coach.GoTo("/how-sure");
        await coach.Window.LookAt("how-sure");
        await coach.GoTo(await coach.Page.EvaluateExpressionAsync<string>("document.querySelector('.rows a').getAttribute('href')"));
        await coach.Window.LookAt("second-reading");
        await coach.GoTo("/sheets?from=first-look");
        await coach.Window.LookAt("sheets");
        await coach.GoTo(lesson);
        await coach.Page.SelectAsync("#SheetKey", "first-look");
        await coach.Page.WaitForFunctionAsync("() => document.querySelectorAll('[data-reading]').length < 20");
        await coach.Window.LookAt("tee-first-look");
        Assert.Equal("14 12 - 31", await coach.Whole());
        Assert.False(await coach.Page.EvaluateExpressionAsync<bool>("document.getElementById('kept').offsetParent !== null"), "Nothing was typed, so nothing is offered.");
    }
}
