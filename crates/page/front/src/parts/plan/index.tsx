// The plan of a haul: strip, what-if, ladder, change points, comparison, issue.
import { useEffect, useMemo } from "preact/hooks";
import type { Trial } from "../../documents";
import { HaulChoice, chosenHaul } from "../../haul_choice";
import { amount, minutes } from "../../units";
import { t } from "../../words";
import { assessed, followAssessed } from "./assessed";
import { Cautions } from "./cautions";
import { ChangeTable } from "./changes";
import { Compare } from "./compare";
import { Effects } from "./effects";
import { IssueForm } from "./issue";
import { Ladder } from "./ladder";
import { StripChart } from "./strip";
import { asSurveyed, changed, drawn, follow, haul, problem, trial } from "./trial";
import { WhatIf } from "./what_if";

/// What is read rather than watched while a slider moves.
const Tables = ({ of }: { of: Trial }) => (
  <>
    <ChangeTable trial={of} />
    <Ladder plan={of.plan} />
    <Effects />
    <Compare trial={of} />
    <Cautions plan={of.plan} />
    <IssueForm changed={changed.value} />
  </>
);

export function PlanPart() {
  const chosen = chosenHaul();
  useEffect(() => follow(), []);
  useEffect(() => followAssessed(), []);
  useEffect(() => {
    if (haul.value !== (chosen?.name ?? null)) {
      trial.value = null;
      drawn.value = null;
      assessed.value = null;
      asSurveyed();
      haul.value = chosen?.name ?? null;
    }
  }, [chosen?.name]);
  const found = trial.value;
  const read = drawn.value;
  const tables = useMemo(() => read && <Tables of={read} />, [read]);
  return (
    <section class="plan" data-cycle-s={found?.cycle_time_s}>
      <div class="heading">
        <h1>{chosen ? t("plan-for-haul", { haul: chosen.name }) : t("page-part-plan")}</h1>
        <HaulChoice part="plan" />
        <p class="draft">{t("plan-draft")}</p>
      </div>
      {problem.value !== null && <p class="wrong" role="alert">{problem.value || t("page-unreachable")}</p>}
      {!found && chosen && problem.value === null && <p role="status">{t("page-working")}</p>}
      {found && (
        <>
          {found.plan.breaks_a_limit && <p class="wrong banner" role="alert">{t("plan-breaks-limits", { count: found.plan.cautions.filter((one) => one.breaks_a_limit).length })}</p>}
          <dl class="facts">
            <div><dt>{t("plan-combination")}</dt><dd>{found.plan.combination}</dd></div>
            <div><dt>{t("plan-route")}</dt><dd>{found.plan.route}, {amount(found.plan.route_km, "distance")}</dd></div>
            {found.cycle_time_s != null && <div><dt>{t("plan-cycle-time")}</dt><dd>{minutes(found.cycle_time_s, "up")}</dd></div>}
            {found.plan.cycle && <div><dt>{t("plan-lowest-supply")}</dt><dd>{amount(found.plan.cycle.lowest_supply_kpa, "pressure", "down")}</dd></div>}
            {found.time_lost_s !== 0 && <div class="lost"><dt>{t("page-time-lost")}</dt><dd>{minutes(found.time_lost_s)}</dd></div>}
          </dl>
          <WhatIf />
          {found.strip ? <StripChart trial={found} strip={found.strip} /> : <p class="wrong" role="alert">{t("caution-not-driven", { reason: found.not_driven_because ?? "" })}</p>}
          {tables}
        </>
      )}
    </section>
  );
}
