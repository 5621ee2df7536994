// What the plan changes, against other ways to run: in total, leg by leg, and what to look out for.
import type { Assessed, Band, Grade, LegEffects, LegWay, NotAssessed } from "../../documents";
import { band, digits, form, inShown, inTheirUnits } from "../../units";
import { t } from "../../words";
import { assessed, behind, refused } from "./assessed";
import { CostOf } from "./cost";

const ratio = (of: Band | null) => (of ? band(of, 2) : t("effects-unknown"));

export function Effects() {
  const found = assessed.value;
  return (
    <section class="effects" aria-busy={behind.value}>
      <h2>{t("plan-effects")}</h2>
      {refused.value !== null && <p class="wrong" role="alert">{refused.value || t("page-unreachable")}</p>}
      {(!found || behind.value) && refused.value === null && <p role="status">{t("page-working")}</p>}
      {found && (
        <div class={behind.value ? "behind" : ""}>
          <p class="about">{t("effects-how")}</p>
          <Totals of={found} />
          <Legs of={found} />
          <Notes of={found} />
          <Missing of={found} />
          <CostOf of={found} />
        </div>
      )}
    </section>
  );
}

function Totals({ of }: { of: Assessed }) {
  const bars = of.effect_totals.flatMap((way) => [way.gravel_rut_ratio?.high ?? 0, way.asphalt_damage_ratio?.high ?? 0]);
  const most = Math.max(1, ...bars);
  const asked = (lacks: NotAssessed[], effect: string) => (lacks.some((one) => one.effect === effect) ? t("effects-unknown") : "–");
  return (
    <div class="wide"><table>
      <thead><tr><th scope="col">{t("effects-way")}</th><th scope="col">{t("effects-cycle")}, min</th><th scope="col">{t("plan-fuel")}, {form("liquid").label}</th><th scope="col">{t("effects-gravel-rut")}</th><th scope="col">{t("effects-asphalt-wear")}</th><th scope="col">{t("effects-trips")}</th><th scope="col">{t("effects-not-assessed")}</th></tr></thead>
      <tbody>{of.effect_totals.map((way) => (
        <tr key={way.way}>
          <th scope="row">{t(`effects-way-${way.way}`)}</th>
          <td>{way.time_s == null ? t("effects-unknown") : digits(way.time_s / 60, 1, "up")}</td>
          <td>{way.fuel_l ? band(way.fuel_l, form("liquid").decimals, (value) => inShown(value, "liquid")) : t("effects-unknown")}</td>
          <td>{way.gravel_rut_ratio ? <Bar of={way.gravel_rut_ratio} most={most} /> : asked(way.not_assessed, "gravel-rut")}</td>
          <td>{way.asphalt_damage_ratio ? <Bar of={way.asphalt_damage_ratio} most={most} /> : asked(way.not_assessed, "pavement")}</td>
          <td>{digits(way.trips_for_the_same, 2)}</td><td>{way.legs_not_assessed}</td>
        </tr>
      ))}</tbody>
    </table></div>
  );
}

/// A band as number and as bar; the line stands where full pressure is.
function Bar({ of, most }: { of: Band; most: number }) {
  const at = (value: number) => (value / most) * 110 + 2;
  return (
    <>{ratio(of)}
      <svg class="band" width="116" height="14" aria-hidden="true">
        <rect x={at(of.low)} y="3" width={Math.max(1, at(of.high) - at(of.low))} height="8" /><circle cx={at(of.middle)} cy="7" r="4" /><line x1={at(1)} x2={at(1)} y1="0" y2="14" />
      </svg></>
  );
}

const ROAD: Record<string, [string, keyof LegWay["means"]]> = {
  gravel: ["effects-road-rut", "gravel_rut_ratio"], earth: ["effects-road-rut", "soil_rut_ratio"], "soft ground": ["effects-road-rut", "soil_rut_ratio"],
  paved: ["effects-road-wear", "asphalt_damage_ratio"], sealed: ["effects-road-wear", "asphalt_damage_ratio"],
};

function grade(of: Grade | null): string {
  if (!of) return t("effects-unknown");
  return t("effects-grade", { word: t(`effects-${of.verdict}`), possible: band(of.possible_pct, 0), needed: digits(of.needed_pct, 0, "up") });
}

function Row({ leg, way, first }: { leg: LegEffects; way: LegWay; first: string[] }) {
  const [key, mean] = ROAD[leg.surface] ?? ["effects-road-stress", "stress_below_ratio" as const];
  const bad = (one: Grade | null) => (one?.verdict === "no-go" ? "wrong" : "");
  return (
    <tr>{first.map((text, index) => (index === 0 ? <th scope="row" key={index}>{text}</th> : <td key={index}>{text}</td>))}
      <td>{ratio(way.means.contact_area_ratio)}</td><td>{t(key, { ratio: ratio(way.means[mean]) })}</td><td>{ratio(way.resistance_ratio)}</td>
      <td class={bad(way.climb)}>{grade(way.climb)}</td><td class={bad(way.descent)}>{grade(way.descent)}</td></tr>
  );
}

function Legs({ of }: { of: Assessed }) {
  const head = (first: string[]) => (
    <thead><tr>{[...first, "effects-patch", "effects-road", "effects-rolling", "effects-climb", "effects-descent"].map((key) => <th scope="col" key={key}>{t(key)}</th>)}</tr></thead>
  );
  return (
    <>
      <div class="wide"><table>
        {head(["effects-leg", "effects-run"])}
        <tbody>{of.effects.flatMap((leg) => leg.ways.filter((way) => way.way === "plan").map((way) => (
          <Row key={`${leg.run}${leg.from_km}`} leg={leg} way={way} first={[leg.leg, t(`plan-${leg.run}`)]} />
        )))}</tbody>
      </table></div>
      <p class="about">{t("effects-legs-how")}</p>
      <details class="numbers"><summary>{t("page-every-way")}</summary>
        {of.effects.map((leg) => (
          <div class="wide" key={`${leg.run}${leg.from_km}`}><table>
            <caption>{leg.leg}, {t(`plan-${leg.run}`)}</caption>
            {head(["effects-way"])}
            <tbody>{leg.ways.map((way) => <Row key={way.way} leg={leg} way={way} first={[t(`effects-way-${way.way}`)]} />)}</tbody>
          </table></div>
        ))}
      </details>
    </>
  );
}

const FLAGS: [string, (group: LegWay["groups"][number]) => boolean][] = [
  ["washboard", (group) => group.washboard_likely === true], ["gap", (group) => group.measure_the_gap],
  ["heat-stop", (group) => group.heat === "stop"], ["heat-warn", (group) => group.heat === "warn"],
];

function Notes({ of }: { of: Assessed }) {
  const flagged = new Map<string, string[]>();
  const flag = (key: string, place: string) => flagged.set(key, [...(flagged.get(key) ?? []), place]);
  for (const leg of of.effects) {
    const place = `${leg.leg} (${t(`plan-${leg.run}`)})`;
    for (const way of leg.ways.filter((one) => one.way === "plan")) {
      if (way.climbs_more_than_it_holds) flag("descent", place);
      if (way.leave_locks_open) flag("wind-up", place);
      for (const [key, is] of FLAGS) {
        const groups = way.groups.filter(is).map((group) => group.axle_group);
        if (groups.length) flag(key, `${place}: ${groups.join(", ")}`);
      }
    }
  }
  const none = of.trials.filter((trial) => trial.found === "no-difference");
  return (
    <ul class="cautions">
      {[...flagged].map(([key, places]) => <li key={key} class={["descent", "heat-stop"].includes(key) ? "wrong" : "note"}>{t(`effects-flag-${key}`, { places: places.join("; ") })}</li>)}
      {easiest(of).map((line) => <li key={line}>{line}</li>)}
      {noLaw(of).map((line) => <li key={line}>{line}</li>)}
      {["top", "asphalt", "memory", "own-case"].map((key) => <li key={key}>{t(`effects-note-${key}`)}</li>)}
      {none.map((trial, index) => (
        <li key={index}>{t("effects-trial", {
          effect: t(`effects-trial-of-${trial.effect}`), ground: t(`effects-trial-on-${trial.ground}`), found: t("effects-trial-no-difference"),
          source: trial.source, read: t(`effects-trial-read-${trial.extent_read}`),
        })}</li>
      ))}
    </ul>
  );
}

/// Where tires roll easiest on soft ground, in words.
function easiest(of: Assessed): string[] {
  const pressure = (value: number) => inShown(value, "pressure");
  const unit = form("pressure").label;
  const lines = of.effects.flatMap((leg) => leg.ways.filter((way) => way.way === "plan").flatMap((way) => {
    const groups = way.groups.filter((group) => group.least_resistance_kpa).map((group) => t(group.least_resistance_at_lowest ? "effects-easiest-lowest" : "effects-easiest-group", {
      group: group.axle_group, pressure: `${band(group.least_resistance_kpa as Band, form("pressure").decimals, pressure)} ${unit}`,
      held: `${digits(pressure(group.pressure_kpa), form("pressure").decimals)} ${unit}`, more: `${digits(100 * ((group.resistance_over_least ?? 1) - 1), 0)} %`,
    }));
    return groups.length ? [t("effects-easiest", { leg: leg.leg, run: t(`plan-${leg.run}`), groups: groups.join("; ") })] : [];
  }));
  return lines.length ? [...new Set(lines), t("effects-easiest-how")] : [];
}

/// Effects that no law reaches, each with the legs it is so on.
function noLaw(of: Assessed): string[] {
  const found = new Map<string, { effect: string; reason: string; legs: Set<string> }>();
  for (const leg of of.effects) {
    const way = leg.ways.find((one) => one.way === "plan");
    for (const lack of [...(way?.not_assessed ?? []), ...(way?.groups.flatMap((group) => group.not_assessed) ?? [])]) {
      if (!lack.reason) continue;
      const one = { effect: lack.effect, reason: lack.reason, legs: new Set<string>() };
      const key = `${lack.effect} ${lack.reason}`;
      if (!found.has(key)) found.set(key, one);
      found.get(key)?.legs.add(leg.leg);
    }
  }
  return [...found.values()].map(({ effect, reason, legs }) =>
    t("effects-no-law", { leg: [...legs].join(", "), effect: t(`effects-of-${effect}`), reason: inTheirUnits(reason) }));
}

function Missing({ of }: { of: Assessed }) {
  if (of.missing_inputs.length === 0) return null;
  return (
    <>
      <h3>{t("effects-missing")}</h3>
      <ul>{of.missing_inputs.map((one, index) => {
        const key = one.decides.every((effect) => effect === "cost-item") ? "effects-missing-cost-line" : "effects-missing-line";
        const place = one.leg ? t("effects-on-legs", { file: one.file, legs: one.leg }) : one.file;
        return (
          <li key={index}><a href={`#/survey/${one.file.split("/").map(encodeURIComponent).join("/")}`}>{one.file}</a>: {t(key, {
            what: t(`effects-give-${one.input}`), place, keys: one.keys.join(` ${t("effects-or")} `), decides: one.decides.map((effect) => t(`effects-of-${effect}`)).join(", "),
          })}</li>
        );
      })}</ul>
    </>
  );
}
