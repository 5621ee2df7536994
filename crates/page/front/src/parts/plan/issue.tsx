// The plan of the survey issued: numbered, dated, frozen, assigned to units.
import { useEffect, useState } from "preact/hooks";
import { Refused, get, send } from "../../api";
import type { IssuedPlan } from "../../documents";
import { chosenHaul } from "../../haul_choice";
import { refresh, site } from "../../state";
import { t } from "../../words";

export function IssueForm({ changed }: { changed: boolean }) {
  const haul = chosenHaul()!;
  const [plans, setPlans] = useState<IssuedPlan[]>([]);
  const [date, setDate] = useState(site.value!.date);
  const [by, setBy] = useState(site.value!.responsible);
  const [units, setUnits] = useState<string[]>([]);
  const [told, setTold] = useState<string | null>(null);
  const list = () => get<{ plans: IssuedPlan[] }>("/plans").then((all) => setPlans(all.plans)).catch(() => setPlans([]));
  useEffect(() => { list(); }, [haul.name]);
  const issue = async (event: Event) => {
    event.preventDefault();
    try {
      const all = await send<{ plans: IssuedPlan[] }>("POST", "/issue", { haul: haul.name, date, units, responsible: by || null, valid_from: null, valid_until: null });
      setPlans(all.plans);
      const newest = all.plans.filter((one) => one.haul === haul.name).at(-1);
      setTold(newest ? t("issued-written", { plan: newest.id, file: `plans/${newest.id}.json` }) : null);
      await refresh();
    } catch (error) {
      setTold(error instanceof Refused && error.status ? error.message : t("page-unreachable"));
    }
  };
  const own = plans.filter((one) => one.haul === haul.name);
  return (
    <section class="issue">
      <h2>{t("page-issue")}</h2>
      {own.length > 0 && <div class="wide"><table>
        <thead><tr><th scope="col">{t("issued-plan")}</th><th scope="col">{t("issued-date")}</th><th scope="col">{t("issued-of-units")}</th><th scope="col">{t("issued-standing")}</th></tr></thead>
        <tbody>{own.map((one) => <tr key={one.id}><th scope="row">{one.id}</th><td>{one.date}</td><td>{one.units.join(", ") || "–"}</td><td>{one.stale ? "●" : t("issued-current")}</td></tr>)}</tbody>
      </table></div>}
      {!site.value!.read_only && (
        <form onSubmit={issue}>
          {changed && <p class="note">{t("page-issue-as-saved")}</p>}
          <label>{t("issued-date")}<input type="date" required value={date} onInput={(event) => setDate(event.currentTarget.value)} /></label>
          <label>{t("page-responsible")}<input value={by} onInput={(event) => setBy(event.currentTarget.value)} /></label>
          <fieldset><legend>{t("issued-of-units")}</legend>
            {haul.units.map((unit) => (
              <label key={unit} class="tick"><input type="checkbox" checked={units.includes(unit)} onChange={(event) => setUnits(event.currentTarget.checked ? [...units, unit] : units.filter((one) => one !== unit))} />{unit}</label>
            ))}
          </fieldset>
          <button class="main">{t("page-issue-now")}</button>
        </form>
      )}
      {told && <p role="status">{told}</p>}
    </section>
  );
}
