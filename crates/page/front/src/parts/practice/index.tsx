// Practice: the planned haul driven by a person, then judged and priced.
import { useEffect, useState } from "preact/hooks";
import { HaulChoice, chosenHaul } from "../../haul_choice";
import { t } from "../../words";
import { begin, drive, leave, planned, problem, run, takeUp, verdict } from "./driving";
import { Road } from "./road";
import { Seen } from "./seen";
import { Judged } from "./verdict";
import { Wheel } from "./wheel";

const SURPRISES = ["slow-compressor", "leak", "unexpected-stop", "closed-lay-by", "wrong-load-state", "soft-leg"];

export function PracticePart() {
  const haul = chosenHaul();
  useEffect(() => run(), []);
  useEffect(() => {
    if (!haul) return;
    if (drive.value && drive.value.haul !== haul.name) leave();
    takeUp(haul.name);
  }, [haul?.name]);
  const now = drive.value;
  return (
    <section class="practice">
      <div class="heading"><h1>{t("page-part-practice")}</h1><HaulChoice part="practice" /></div>
      {problem.value !== null && <p class="wrong" role="alert">{problem.value || t("page-unreachable")}</p>}
      {!now && haul && <Begin haul={haul.name} />}
      {now && planned.value?.strip && (
        <>
          <Seen now={now} strip={planned.value.strip} />
          <Road now={now} trial={planned.value} strip={planned.value.strip} />
          <Wheel now={now} plan={planned.value.plan} />
        </>
      )}
      {verdict.value && <Judged verdict={verdict.value} />}
      <p class="about">{t("practice-on-the-real-road")}</p>
    </section>
  );
}

function Begin({ haul }: { haul: string }) {
  const [surprise, setSurprise] = useState("any");
  const [seed, setSeed] = useState("1");
  const wrong = !/^\d{1,9}$/.test(seed);
  return (
    <form class="begin" onSubmit={(event) => { event.preventDefault(); if (!wrong) begin({ haul, surprise, seed: Number(seed) }); }}>
      <p>{t("page-practice-how")}</p>
      <label>{t("page-practice-surprise")}
        <select value={surprise} onChange={(event) => setSurprise(event.currentTarget.value)}>
          <option value="any">{t("page-practice-any")}</option>
          <option value="none">{t("page-practice-none")}</option>
          {SURPRISES.map((one) => <option key={one} value={one}>{t(`surprise-${one}`)}</option>)}
        </select>
      </label>
      <label>{t("page-practice-seed")}
        <input inputMode="numeric" value={seed} aria-invalid={wrong} onInput={(event) => setSeed(event.currentTarget.value)} />
        {wrong && <span class="wrong" role="alert">{t("page-practice-seed-wrong")}</span>}
      </label>
      <button class="main">{t("page-practice-begin")}</button>
    </form>
  );
}
