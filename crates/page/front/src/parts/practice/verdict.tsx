// The drive judged by the rules of the audit, and priced against the plan's own drive.
import type { Finding, Tally, Verdict } from "../../documents";
import { amount, digits, form, inShown, minutes, number } from "../../units";
import { t } from "../../words";

export function Judged({ verdict }: { verdict: Verdict }) {
  const what = verdict.surprises.map((one) => t(`surprise-${one}`)).join(", ");
  const flat = verdict.findings.some((one) => one.severity === "danger" && one.evidence.cold_kpa != null);
  return (
    <section class="verdict" aria-live="polite">
      <h2>{t("practice-title", { haul: verdict.haul, seed: verdict.seed })}</h2>
      <p class={verdict.driven.arrived ? "" : "wrong"}>{t(verdict.driven.arrived ? "practice-arrived" : "practice-not-arrived")} {what ? t("practice-surprise", { what }) : t("practice-no-surprise")}</p>
      <h3>{t("practice-findings")}</h3>
      {verdict.findings.length === 0 ? <p>{t("practice-no-finding")}</p> : (
        <div class="wide"><table>
          <thead><tr><th scope="col">{t("practice-severity")}</th><th scope="col">{t("practice-finding")}</th><th scope="col">{t("practice-at")}, {form("distance").label}</th><th scope="col">{t("practice-when")}</th><th scope="col">{t("practice-lasted")}</th><th scope="col">{t("practice-evidence")}</th></tr></thead>
          <tbody>{verdict.findings.map((one, index) => (
            <tr key={index} class={one.severity === "loss" ? "" : "wrong"}>
              <td>{t(`finding-severity-${one.severity}`)}</td><th scope="row">{t(`finding-${one.rule}`)}</th><td>{number(one.km, "distance")}</td>
              <td>{minutes(one.start_s)}</td><td>{minutes(one.lasted_s)}</td><td>{evidence(one)}</td>
            </tr>
          ))}</tbody>
        </table></div>
      )}
      {flat && <p class="wrong">{t("finding-run-flat")}</p>}
      {verdict.coverage.unknown_s > 0 && <p>{t("finding-unknown", { time: minutes(verdict.coverage.unknown_s) })}</p>}
      {verdict.driven.arrived ? <Price verdict={verdict} /> : <p>{t("page-practice-price-later")}</p>}
    </section>
  );
}

/// What the drive cost against the plan's own; of a drive cut short it would say nothing.
function Price({ verdict }: { verdict: Verdict }) {
  return (
    <>
      <h3>{t("practice-price")}</h3>
      <div class="wide"><table>
        <thead><tr><th scope="col">{t("practice-item")}</th><th scope="col">{t("practice-yours")}</th><th scope="col">{t("practice-plans")}</th><th scope="col">{t("practice-more")}</th><th scope="col">{t("practice-cost")}</th></tr></thead>
        <tbody>{verdict.prices.map((price) => {
          const more = ["time", "compressor"].includes(price.item) ? price.more * 3600 : price.more;
          return (
            <tr key={price.item}><th scope="row">{t(`practice-item-${price.item}`)}</th>
              <td>{shown(price.item, of(price.item, verdict.driven))}</td><td>{shown(price.item, of(price.item, verdict.planned))}</td><td>{shown(price.item, more)}</td>
              <td>{price.cost == null ? t("practice-no-price") : digits(price.cost, 2)}</td></tr>
          );
        })}</tbody>
      </table></div>
      <p>{verdict.cost != null && verdict.currency ? t("practice-cost-together", { cost: digits(verdict.cost, 2), currency: verdict.currency }) : t("practice-nothing-priced")}</p>
    </>
  );
}

/// Seconds, liters, a count, kPa km or kPa min.
function of(item: string, tally: Tally): number {
  if (item === "time") return tally.time_s;
  if (item === "fuel") return tally.fuel_l;
  if (item === "compressor") return tally.compressor_loaded_s;
  if (item === "changes") return tally.changes;
  return item === "road" ? tally.hard_kpa_km : tally.under_minimum_kpa_min;
}

function shown(item: string, value: number): string {
  const step = (kind: "pressure" | "distance") => inShown(1, kind) - inShown(0, kind);
  if (item === "time" || item === "compressor") return minutes(value);
  if (item === "fuel") return amount(value, "liquid");
  if (item === "changes") return digits(value, 0);
  if (item === "road") return `${digits(value * step("pressure") * step("distance"), 0)} ${form("pressure").label} ${form("distance").label}`;
  return `${digits(value * step("pressure"), 0)} ${form("pressure").label} min`;
}

function evidence({ evidence: seen, load_state }: Finding): string {
  const channel = seen.channel ?? "–", rung = seen.rung ?? "–";
  if (seen.reading_kpa != null && seen.reading_limit_kpa != null) {
    return t("finding-above", { channel, reading: amount(seen.reading_kpa, "pressure", "up"), limit: amount(seen.reading_limit_kpa, "pressure", "down") });
  }
  if (seen.cold_kpa != null && seen.minimum_kpa != null) {
    const args = { channel, rung, load_state, pressure: amount(seen.cold_kpa, "pressure", "down"), limit: amount(seen.minimum_kpa, "pressure", "up") };
    return seen.min_governed_by ? t("finding-below", { ...args, governed: t(`limit-${seen.min_governed_by}`) }) : t("finding-below-plain", args);
  }
  if (seen.speed_kmh != null && seen.cap_kmh != null) {
    return t("finding-over", { speed: amount(seen.speed_kmh, "speed", "up"), rung, cap: amount(seen.cap_kmh, "speed", "down") });
  }
  if (seen.held_s != null && seen.held_m != null) {
    const time = seen.hold_limit_s == null ? null : minutes(seen.hold_limit_s, "down");
    const distance = seen.hold_limit_m == null ? null : amount(seen.hold_limit_m, "span", "down");
    const limit = time && distance ? t("finding-hold-both", { time, distance }) : time ?? distance ?? "–";
    return t("finding-held", { time: minutes(seen.held_s, "up"), distance: amount(seen.held_m, "span", "up"), rung, limit });
  }
  return t("finding-rose", { channel, rise: amount(seen.rise_kpa, "pressure"), reading: amount(seen.reading_kpa, "pressure") });
}
