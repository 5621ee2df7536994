// Two plans side by side: the one kept aside, and the one on show.
import type { Plan, Trial } from "../../documents";
import { amount, digits, form, minutes, number } from "../../units";
import { t } from "../../words";
import { kept } from "./trial";

export function Compare({ trial }: { trial: Trial }) {
  const other = kept.value?.plan.haul === trial.plan.haul ? kept.value : null;
  return (
    <section class="compare">
      <h2>{t("page-compare")}</h2>
      <p><button onClick={() => { kept.value = trial; }}>{t("page-keep-aside")}</button> {other && <button onClick={() => { kept.value = null; }}>{t("page-let-go")}</button>}</p>
      {other ? <Differences a={other} b={trial} /> : <p>{t("page-compare-how")}</p>}
    </section>
  );
}

function Differences({ a, b }: { a: Trial; b: Trial }) {
  const rows: [string, string, string][] = [];
  const row = (name: string, of: (one: Trial) => string) => { if (of(a) !== of(b)) rows.push([name, of(a), of(b)]); };
  row(t("plan-cycle-time"), (one) => one.cycle_time_s == null ? "–" : minutes(one.cycle_time_s));
  row(t("plan-cycle-fuel"), (one) => amount(one.plan.cycle?.fuel_l, "liquid"));
  row(t("plan-compressor-loaded"), (one) => one.plan.cycle ? minutes(one.plan.cycle.compressor_loaded_s) : "–");
  row(t("plan-lowest-supply"), (one) => amount(one.plan.cycle?.lowest_supply_kpa, "pressure", "down"));
  for (const cell of b.plan.ladder.filter((one) => one.used)) {
    const same = (plan: Plan) => plan.ladder.find((one) => one.channel === cell.channel && one.load_state === cell.load_state && one.rung === cell.rung && one.chain_state === cell.chain_state);
    row(`${cell.load_state}, ${cell.rung}, ${cell.channel} (${form("pressure").label})`, (one) => number(same(one.plan)?.set_kpa, "pressure"));
  }
  b.plan.change_points.forEach((_, index) => row(t("page-change-number", { number: index + 1 }), (one) => {
    const point = one.plan.change_points[index];
    const called = one.called.find((call) => call.number === index);
    return point ? `${amount(called?.km ?? point.km, "distance")}, ${digits(point.change_time_s / 60, 1)} min` : "–";
  }));
  if (rows.length === 0) return <p>{t("page-no-difference")}</p>;
  return (
    <div class="wide"><table>
      <thead><tr><th scope="col">{t("page-what")}</th><th scope="col">{t("page-kept")}</th><th scope="col">{t("page-on-show")}</th></tr></thead>
      <tbody>{rows.map(([name, one, two]) => <tr key={name}><th scope="row">{name}</th><td>{one}</td><td>{two}</td></tr>)}</tbody>
    </table></div>
  );
}
