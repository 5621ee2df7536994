// The call from the road: which truck, what it carries, what the gauge shows.
import { useState } from "preact/hooks";
import { Refused, send } from "../api";
import type { Now, Said } from "../documents";
import { chosenHaul, HaulChoice } from "../haul_choice";
import { digits, amount, form, fromShown, number, typed } from "../units";
import type { Kind, Round } from "../units";
import { has, t } from "../words";

const SYMBOL: Record<string, string> = { kPa: "kPa", psi: "psi", bar: "bar" };

export function NowPart() {
  const haul = chosenHaul();
  const [unit, setUnit] = useState("");
  const [load, setLoad] = useState<string | null>(null);
  const [tires, setTires] = useState("not-known");
  const [readings, setReadings] = useState<Record<string, string>>({});
  const [answer, setAnswer] = useState<Now | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  if (!haul) return <section class="now"><h1>{t("page-part-now")}</h1><HaulChoice part="now" /></section>;

  const names = [...haul.channels, ...haul.fixed_groups];
  const wrong = (name: string) => { const text = readings[name] ?? ""; return text !== "" && typed(text) === null; };
  const ask = async (event: Event) => {
    event.preventDefault();
    if (names.some(wrong)) return;
    const given = names.filter((name) => (readings[name] ?? "") !== "").map((name) => ({
      of: name, pressure_kpa: fromShown(typed(readings[name]!)!, "pressure"), typed_in: SYMBOL[form("pressure").label],
    }));
    const call = { unit: unit || null, haul: haul.name, load_state: load, tires, readings: given };
    try {
      setAnswer(await send<Now>("POST", "/now", call));
      setProblem(null);
    } catch (error) {
      setAnswer(null);
      setProblem(error instanceof Refused && error.status ? error.message : t("page-unreachable"));
    }
  };
  return (
    <section class="now">
      <h1>{t("page-part-now")}</h1>
      <HaulChoice part="now" />
      <form onSubmit={ask}>
        <fieldset>
          <legend>1. {t("page-now-truck")}</legend>
          <Choice name="unit" value={unit} set={setUnit} options={[["", haul.combination], ...haul.units.map((one) => [one, one] as [string, string])]} />
        </fieldset>
        <fieldset>
          <legend>2. {t("page-now-load")}</legend>
          <Choice name="load" value={load ?? ""} set={(name) => setLoad(name || null)} options={[...haul.load_states.map((one) => [one, one] as [string, string]), ["", t("page-now-nobody-knows")]]} />
        </fieldset>
        <fieldset>
          <legend>3. {t("page-now-gauge")}, {form("pressure").label}</legend>
          <div class="readings">
            {names.map((name) => (
              <label key={name}>{name}
                <input inputMode="decimal" autocomplete="off" value={readings[name] ?? ""} aria-invalid={wrong(name)}
                  onInput={(event) => setReadings({ ...readings, [name]: event.currentTarget.value })} />
                {wrong(name) && <span class="wrong" role="alert">{t("page-not-a-number")}</span>}
              </label>
            ))}
          </div>
          <Choice name="tires" value={tires} set={setTires} options={["cold", "warm", "not-known"].map((one) => [one, t(`page-now-${one}`)] as [string, string])} />
        </fieldset>
        <button class="main">{t("page-now-ask")}</button>
      </form>
      <div aria-live="polite">
        {problem && <p class="wrong" role="alert">{problem}</p>}
        {answer && <Answer answer={answer} />}
      </div>
    </section>
  );
}

function Choice({ name, value, set, options }: { name: string; value: string; set: (value: string) => void; options: [string, string][] }) {
  return (
    <div class="buttons">
      {options.map(([key, text]) => (
        <label key={key} class={key === value ? "chosen" : ""}>
          <input type="radio" name={name} checked={key === value} onChange={() => set(key)} />{text}
        </label>
      ))}
    </div>
  );
}

function Answer({ answer }: { answer: Now }) {
  const verdict = answer.verdict === "go-slow" && answer.how_far.to === "off-the-road" ? "now-walk" : `now-${answer.verdict}`;
  const flat = answer.reasons.some((reason) => reason.what === "under-service-share");
  const loss = ["loss-stop-filling", "loss-slow", "loss-stop", "loss-look", "loss-stay-away", "loss-isolate", "loss-trained", "service-rule"];
  const safety = [...(flat ? loss : []), "maker-approves", "law-decides", "trained-people", "side-slope", "tipping", "ice", "rollover", "reads-only"];
  return (
    <article class={`answer ${answer.verdict}`}>
      <h2>{t(verdict, { speed: amount(answer.highest_speed_kmh, "speed", "down") })}</h2>
      <p class="far"><strong>{t("now-how-far")}:</strong> {howFar(answer)}</p>
      <h3>{t("now-why")}</h3>
      <ul>{answer.reasons.map((one, index) => <li key={index}>{said("now-reason", one)}</li>)}</ul>
      {answer.checks.length > 0 && <><h3>{t("now-next")}</h3><ul>{answer.checks.map((one, index) => <li key={index}>{said("now-check", one)}</li>)}</ul></>}
      <div class="wide"><table>
        <caption>{t("now-groups")}</caption>
        <thead><tr><th scope="col">{t("plan-axle-group")}</th><th scope="col">{t("now-read")}, {form("pressure").label}</th><th scope="col">{t("plan-cold")}, {form("pressure").label}</th><th scope="col">{t("now-at-most")}, {form("speed").label}</th><th scope="col">{t("now-holds-rung")}</th></tr></thead>
        <tbody>{answer.groups.map((group) => (
          <tr key={group.axle_group}><th scope="row">{group.axle_group}</th>
            <td>{group.known_from === "kept" ? t("now-kept") : group.known_from === "not-gauged" ? t("now-not-gauged") : number(group.reading_kpa, "pressure")}</td>
            <td>{number(group.cold_kpa, "pressure", "down")}</td>
            <td>{group.verdict === "stop" ? "–" : number(group.highest_speed_kmh, "speed", "down")}</td>
            <td>{group.rung ?? "–"}</td></tr>
        ))}</tbody>
      </table></div>
      <h3>{t("now-safety")}</h3>
      <ul>{safety.map((key) => <li key={key}>{t(`caution-${key}`)}</li>)}</ul>
    </article>
  );
}

function howFar(answer: Now): string {
  const far = answer.how_far;
  if (far.to === "nowhere") return t("now-far-nowhere");
  if (far.to === "off-the-road") return t("now-far-off-the-road");
  if (far.to === "next-stop") return t("now-far-next-stop");
  const limits = [far.distance_m != null ? amount(far.distance_m / 1000, "distance", "down") : "", far.time_min != null ? `${digits(far.time_min, 0, "down")} min` : ""];
  return t("now-far-hold", { limit: limits.filter(Boolean).join(", ") });
}

// What there is rounds down, what is needed rounds up.
const NUMBERS: Record<string, [string, Kind, Round]> = {
  kept_kpa: ["kept", "pressure", "down"], cold_kpa: ["cold", "pressure", "down"], needed_kpa: ["needed", "pressure", "up"],
  highest_kpa: ["highest", "pressure", "down"], reading_kpa: ["reading", "pressure", "nearest"], closes_below_kpa: ["closes", "pressure", "up"],
  set_kpa: ["set", "pressure", "nearest"], difference_kpa: ["difference", "pressure", "up"], load_kg: ["load", "load", "up"], highest_kg: ["highest", "load", "down"],
};

function said(prefix: string, one: Said): string {
  const args: Record<string, string> = { ...one.names };
  if (one.names.governed_by) args.governed_by = t(`limit-${one.names.governed_by}`);
  if (one.names.why && has(`why-${one.names.why}`)) args.why = t(`why-${one.names.why}`, filled(one.numbers));
  return t(`${prefix}-${one.what}`, { ...args, ...filled(one.numbers) });
}

function filled(numbers: Record<string, number>): Record<string, string> {
  return Object.fromEntries(Object.entries(numbers).map(([key, value]) => {
    const known = NUMBERS[key];
    if (known) return [known[0], amount(value, known[1], known[2])];
    if (key === "share_pct") return ["share", `${digits(value, 0, "down")} %`];
    if (key === "wheel_ends") return ["count", digits(value, 0)];
    return [key, digits(value, 0)];
  }));
}
