// Cost and gain by payer, what decides it, and other ways to run.
import type { Assessed, Band, Cost, CostLine } from "../../documents";
import { band, digits } from "../../units";
import { t } from "../../words";

const money = (of: Band) => band(of, 0);
const DECIDING = 3;

function told(line: CostLine): string {
  if (line.per_year) return money(line.per_year);
  return line.not_assessed?.why === "give" ? t("cost-not-told") : t("effects-unknown");
}

function payback(of: Cost): string {
  if (of.payback_years != null) return t("cost-years", { years: digits(of.payback_years, 1, "up") });
  return of.payer === "all" || of.lines.some((line) => line.item === "system") ? t("cost-never") : "–";
}

export function CostOf({ of }: { of: Assessed }) {
  const first = of.cost[0];
  if (!first) return null;
  const left = of.cost.find((one) => one.payer === "all")?.left_out ?? [];
  return (
    <>
      <h2>{t("plan-cost")}</h2>
      <p class="about">{t("cost-how", { currency: first.currency })}</p>
      <div class="wide"><table>
        <thead><tr>{["cost-payer", "cost-net", "cost-present-value", "cost-payback", "cost-break-even"].map((key) => <th scope="col" key={key}>{t(key)}</th>)}</tr></thead>
        <tbody>{of.cost.map((one) => {
          const untold = one.lines.length > 0 && one.lines.every((line) => !line.per_year);
          const sum = (value: Band) => (untold ? t("cost-not-told") : money(value));
          return (
            <tr key={one.payer}><th scope="row">{t(`cost-payer-${one.payer}`)}</th><td>{sum(one.net_after_capital)}</td><td>{sum(one.present_value)}</td>
              <td>{payback(one)}</td><td>{one.break_even_lost_min == null ? "–" : digits(one.break_even_lost_min, 1, "down")}</td></tr>
          );
        })}</tbody>
      </table></div>
      {left.length > 0 && <p class="note">{t("cost-left-out", { items: left.map((item) => t(`cost-item-${item}`)).join(", ") })}</p>}
      <details class="numbers"><summary>{t("page-cost-lines")}</summary>
        <div class="wide"><table>
          <thead><tr>{["cost-payer", "cost-item", "cost-per-year"].map((key) => <th scope="col" key={key}>{t(key)}</th>)}</tr></thead>
          <tbody>{of.cost.filter((one) => one.payer !== "all").flatMap((one) => one.lines.map((line) => (
            <tr key={one.payer + line.item}><th scope="row">{t(`cost-payer-${one.payer}`)}</th><td>{t(`cost-item-${line.item}`)}</td><td>{told(line)}</td></tr>
          )))}</tbody>
        </table></div>
      </details>
      {of.cost_decided_by.length > 0 && <Deciding of={of} />}
      {of.cost_rivals.length > 0 && (
        <>
          <h3>{t("cost-rivals")}</h3>
          <div class="wide"><table>
            <thead><tr>{["effects-way", "cost-payer", "cost-item", "cost-per-year"].map((key) => <th scope="col" key={key}>{t(key)}</th>)}</tr></thead>
            <tbody>{of.cost_rivals.flatMap((rival) => rival.lines.map((line) => (
              <tr key={rival.way + line.payer + line.item}><th scope="row">{t(`effects-way-${rival.way}`)}</th><td>{t(`cost-payer-${line.payer}`)}</td><td>{t(`cost-item-${line.item}`)}</td><td>{told(line)}</td></tr>
            )))}</tbody>
          </table></div>
        </>
      )}
    </>
  );
}

/// The figures that decide it most, each as a bar from its low to its high end.
function Deciding({ of }: { of: Assessed }) {
  const figures = of.cost_decided_by.slice(0, DECIDING);
  const ends = figures.flatMap((one) => [one.present_value_at_low, one.present_value_at_high, 0]);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const x = (value: number) => 4 + ((value - low) / (high - low || 1)) * 212;
  return (
    <>
      <p>{t("cost-decided-by")}</p>
      <ul class="deciding">{figures.map((one) => (
        <li key={one.figure}>
          <svg width="220" height="16" aria-hidden="true"><rect x={Math.min(x(one.present_value_at_low), x(one.present_value_at_high))} width={Math.abs(x(one.present_value_at_high) - x(one.present_value_at_low))} y="3" height="10" /><line x1={x(0)} x2={x(0)} y1="0" y2="16" /></svg>
          {t("cost-decides", { figure: t(`cost-figure-${one.figure}`), low: digits(one.present_value_at_low, 0), high: digits(one.present_value_at_high, 0), ends: t(one.own_band ? "cost-ends-own" : "cost-ends-fifth") })}
        </li>
      ))}</ul>
    </>
  );
}
