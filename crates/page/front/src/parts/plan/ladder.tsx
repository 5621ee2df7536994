// The ladder to edit: each cell with its window, what governs it, and what was added.
import { useState } from "preact/hooks";
import { Refused, readFile, send } from "../../api";
import type { Cell, FileDocument, Plan } from "../../documents";
import { chosenHaul } from "../../haul_choice";
import { refresh, site } from "../../state";
import { amount, form, fromShown, inShown, digits, number, typed } from "../../units";
import { has, t } from "../../words";
import { handSet, sameCell } from "./trial";
import type { HandSet } from "./trial";

const APPROVAL: Record<string, string> = {
  maker: "plan-approval-brief-maker", standard: "plan-approval-brief-standard",
  "needs approval": "plan-approval-needed", "not possible": "plan-approval-not-possible",
};
const brief = (kind: string | null) => kind == null ? "" : t(has(`limit-brief-${kind}`) ? `limit-brief-${kind}` : `limit-${kind}`);

export function Ladder({ plan }: { plan: Plan }) {
  const [open, setOpen] = useState<Cell | null>(null);
  const chains = plan.ladder[0]?.chain_state;
  const cells = plan.ladder.filter((cell) => cell.chain_state === chains);
  const states = [...new Set(cells.map((cell) => cell.load_state))];
  const shown = open && cells.find((cell) => sameCell(open as unknown as HandSet, cell));
  return (
    <section class="ladder">
      <h2>{t("plan-ladder")}</h2>
      <p>{t("page-ladder-how", { unit: form("pressure").label, temperature: amount(plan.reference_temperature_c, "temperature") })}</p>
      <div class="beside">
        <div class="wide"><table>
          <thead><tr><th scope="col">{t("plan-load-state")}</th><th scope="col">{t("plan-rung")}</th><th scope="col">{t("plan-cap")}</th>{plan.channels.map((name) => <th scope="col" key={name}>{name}</th>)}</tr></thead>
          <tbody>{states.flatMap((state) => plan.rungs.map((rung) => (
            <tr key={`${state}-${rung.name}`}>
              <th scope="row">{state}</th><th scope="row">{rung.name}</th><td>{amount(rung.cap_kmh, "speed", "down")}</td>
              {plan.channels.map((channel) => {
                const cell = cells.find((one) => one.channel === channel && one.load_state === state && one.rung === rung.name);
                return <td key={channel} class={cell?.used ? "used" : "unused"}>{cell && <CellBox cell={cell} open={() => setOpen(cell)} />}</td>;
              })}
            </tr>
          )))}</tbody>
        </table></div>
        {shown && <Account cell={shown} close={() => setOpen(null)} />}
      </div>
      <SaveCells />
    </section>
  );
}

function CellBox({ cell, open }: { cell: Cell; open: () => void }) {
  const [text, setText] = useState<string | null>(null);
  const [wrong, setWrong] = useState(false);
  const own = handSet.value.some((one) => sameCell(one, cell));
  const name = `${cell.load_state}, ${cell.rung}, ${cell.channel}`;
  const commit = () => {
    if (text === null) return;
    const rest = handSet.value.filter((one) => !sameCell(one, cell));
    const value = typed(text);
    setWrong(false);
    if (text.trim() === "") handSet.value = rest;
    else if (value === null) { setWrong(true); return; }
    else handSet.value = [...rest, { channel: cell.channel, load_state: cell.load_state, rung: cell.rung, pressure_kpa: fromShown(value, "pressure") }];
    setText(null);
  };
  return (
    <div class={`cell ${own ? "own" : ""}`}>
      {cell.pressure_kpa == null && <span class="wrong">{t("plan-approval-not-possible")}</span>}
      <input aria-label={name} inputMode="decimal" aria-invalid={wrong} value={text ?? (cell.pressure_kpa == null ? "" : number(cell.pressure_kpa, "pressure", "up"))}
        onFocus={open} onInput={(event) => setText(event.currentTarget.value)} onBlur={commit}
        onKeyDown={(event) => { if (event.key === "Enter") commit(); if (event.key === "Escape") { setText(null); setWrong(false); } }} />
      {wrong && <span class="wrong" role="alert">{t("page-not-a-number")}</span>}
      <small>{number(cell.min_kpa, "pressure", "up")}–{number(cell.max_kpa, "pressure", "down")}</small>
      <small>{brief(cell.min_governed_by)}</small>
      <small class={cell.approval === "needs approval" ? "needs" : ""}>{cell.approval === "needs approval" ? "△ " : ""}{t(APPROVAL[cell.approval] ?? "plan-approval")}</small>
      {own && <button class="small" onClick={() => { handSet.value = handSet.value.filter((one) => !sameCell(one, cell)); }}>{t("page-put-back")}</button>}
    </div>
  );
}

const STACK: Record<string, string> = { gauge: "plan-stack-gauge", deadband: "plan-stack-deadband", duals: "plan-stack-duals", "load share": "plan-stack-load-share", warmest: "plan-stack-warmest", snap: "plan-stack-snap" };
const added = (kind: string) => {
  const key = STACK[kind] ?? `plan-stack-${kind.replaceAll(" ", "-")}`;
  return has(key) ? t(key) : kind;
};

function Account({ cell, close }: { cell: Cell; close: () => void }) {
  return (
    <aside class="account" aria-label={t("plan-what-decided")}>
      <button class="close" onClick={close} aria-label={t("page-close")}>×</button>
      <h3>{cell.load_state}, {cell.rung}, {cell.channel}</h3>
      <dl>
        <dt>{t("plan-lowest")}</dt><dd>{amount(cell.min_kpa, "pressure", "up")} {cell.min_governed_by && <><br /><small>{t(`limit-${cell.min_governed_by}`)}; {cell.min_source}</small></>}</dd>
        {cell.min_runner_up && <><dt>{t("plan-next-closest")}</dt><dd>{amount(cell.min_runner_up.pressure_kpa, "pressure", "up")}<br /><small>{t(`limit-${cell.min_runner_up.governed_by}`)}</small></dd></>}
        <dt>{t("plan-highest")}</dt><dd>{amount(cell.max_kpa, "pressure", "down")} {cell.max_governed_by && <><br /><small>{t(`limit-${cell.max_governed_by}`)}</small></>}</dd>
        {cell.stack.length > 0 && <><dt>{t("plan-stack")}</dt><dd><ul>{cell.stack.map((one) => <li key={one.added_for}>{added(one.added_for)}: {digits(one.pressure_kpa * form("pressure").factor, form("pressure").decimals + 1)} {form("pressure").label}</li>)}</ul></dd></>}
        <dt>{t("plan-value-to-set")}</dt><dd><strong>{amount(cell.set_kpa, "pressure")}</strong></dd>
        <dt>{t("plan-approval")}</dt><dd>{t(APPROVAL[cell.approval] ?? "plan-approval")}</dd>
        {cell.ground_advice_kpa != null && <dd>{t("plan-ground", { advice: amount(cell.ground_advice_kpa, "pressure", "down") })}</dd>}
      </dl>
    </aside>
  );
}

interface Row { channel?: string; load_state?: string; rung?: string; [key: string]: unknown }

/// Cells set by hand go into the file of the combination, like everything else in the survey.
function SaveCells() {
  const [told, setTold] = useState<string | null>(null);
  const cells = handSet.value;
  const save = async () => {
    const path = chosenHaul()!.combination_file;
    try {
      const file = await readFile(path);
      const rows = ((file.values as { hand_set?: Row[] } | null)?.hand_set ?? []) as Row[];
      const unit = form("pressure").label.toLowerCase();
      const edits = cells.flatMap((cell) => {
        const value = Number(inShown(cell.pressure_kpa, "pressure").toFixed(3));
        const row = rows.findIndex((one) => sameCell(cell, one as unknown as HandSet));
        if (row < 0) return [{ do: "append", pointer: "/hand_set", value: { channel: cell.channel, load_state: cell.load_state, rung: cell.rung, [`pressure_${unit}`]: value } }];
        const old = Object.keys(rows[row]!).find((key) => key.startsWith("pressure_"));
        const at = (key: string) => `/hand_set/${row}/${key}`;
        const set = { do: "set", pointer: at(`pressure_${unit}`), value };
        return old && old !== `pressure_${unit}` ? [{ do: "remove", pointer: at(old) }, set] : [set];
      });
      await send<FileDocument>("PUT", "/file", { path, base: file.hash, edits });
      handSet.value = [];
      setTold(t("page-saved", { file: path }));
      await refresh();
    } catch (error) {
      setTold(error instanceof Refused && error.status ? error.message : t("page-unreachable"));
    }
  };
  return (
    <div class="save">
      {cells.length > 0 && !site.value!.read_only && <button class="main" onClick={save}>{t("page-save-cells", { count: cells.length })}</button>}
      {told && <p role="status">{told}</p>}
    </div>
  );
}
