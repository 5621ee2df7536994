// Paper: every document of a haul, as a draft or of an issued plan, to look at, print or keep.
import { useEffect, useRef, useState } from "preact/hooks";
import { Refused, get, getBlob } from "../api";
import type { IssuedPlan } from "../documents";
import { HaulChoice, chosenHaul } from "../haul_choice";
import { language, profile } from "../state";
import { t } from "../words";

interface Papers { papers: { kind: string }[]; formats: string[] }

export function PaperPart() {
  const haul = chosenHaul();
  const [papers, setPapers] = useState<Papers | null>(null);
  const [plans, setPlans] = useState<IssuedPlan[]>([]);
  const [plan, setPlan] = useState("");
  const [shown, setShown] = useState<{ kind: string; address: string } | null>(null);
  const [busy, setBusy] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const frame = useRef<HTMLIFrameElement>(null);
  const failed = (error: unknown) => setProblem(error instanceof Refused && error.status ? error.message : t("page-unreachable"));
  useEffect(() => { get<Papers>("/papers").then(setPapers, failed); }, []);
  useEffect(() => {
    setPlan("");
    setShown(null);
    if (haul) get<{ plans: IssuedPlan[] }>("/plans").then((all) => setPlans(all.plans.filter((one) => one.haul === haul.name)), failed);
  }, [haul?.name]);
  useEffect(() => () => { if (shown) URL.revokeObjectURL(shown.address); }, [shown]);

  const make = async (kind: string, format: string) => {
    setBusy(kind);
    setProblem(null);
    const asked = new URLSearchParams({ kind, haul: haul!.name, language: language.value, units: profile.value, format });
    if (plan) asked.set("plan", plan);
    try {
      const blob = await getBlob(`/paper?${asked}`);
      const address = URL.createObjectURL(blob);
      if (format === "html") {
        setShown({ kind, address });
      } else {
        const link = Object.assign(document.createElement("a"), { href: address, download: `${kind}${plan && `-${plan}`}.${format}` });
        link.click();
        setTimeout(() => URL.revokeObjectURL(address), 1000);
      }
    } catch (error) {
      setShown(null);
      failed(error);
    }
    setBusy(null);
  };

  return (
    <section class="paper">
      <div class="heading"><h1>{t("page-part-paper")}</h1><HaulChoice part="paper" />
        {plans.length > 0 && (
          <label class="choice">{t("issued-plan")}
            <select value={plan} onChange={(event) => { setPlan(event.currentTarget.value); setShown(null); }}>
              <option value="">{t("page-paper-draft")}</option>
              {plans.map((one) => <option key={one.id} value={one.number} disabled={one.stale}>{one.id}{one.stale ? ` (${t("page-paper-stale")})` : ""}</option>)}
            </select>
          </label>
        )}
      </div>
      <p class="about">{t("page-paper-how")}</p>
      {haul && papers && (
        <div class="wide"><table>
          <tbody>{papers.papers.map(({ kind }) => (
            <tr key={kind}><th scope="row">{t(`paper-kind-${kind}`)}</th>
              <td>{["html", ...papers.formats.filter((one) => one !== "html")].map((format) => (
                <button key={format} disabled={busy !== null} aria-label={`${t(`paper-kind-${kind}`)}: ${t(`page-paper-${format}`)}`} onClick={() => make(kind, format)}>{t(`page-paper-${format}`)}</button>
              ))}</td></tr>
          ))}</tbody>
        </table></div>
      )}
      <div role="status">{busy && t("page-working")}</div>
      {problem !== null && <p class="wrong" role="alert">{problem}</p>}
      {shown && (
        <figure>
          <figcaption><h2>{t(`paper-kind-${shown.kind}`)}</h2> <button onClick={() => frame.current?.contentWindow?.print()}>{t("page-paper-print")}</button></figcaption>
          <iframe ref={frame} src={shown.address} title={t(`paper-kind-${shown.kind}`)} />
        </figure>
      )}
    </section>
  );
}
