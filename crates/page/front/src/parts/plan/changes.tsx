// The change points as a table: where, how long, whether it fits, what a call elsewhere does.
import type { Trial } from "../../documents";
import { amount, digits } from "../../units";
import { t } from "../../words";
import { moved } from "./trial";

export function ChangeTable({ trial }: { trial: Trial }) {
  const points = trial.plan.change_points;
  return (
    <section>
      <h2>{t("plan-change-points")}</h2>
      <div class="wide"><table class="changes">
        <thead><tr><th scope="col">#</th><th scope="col">{t("plan-load-state")}</th><th scope="col">{t("plan-rung")}</th><th scope="col">{t("page-start-at")}</th><th scope="col">{t("plan-reach-by")}</th><th scope="col">{t("plan-lead")}</th><th scope="col">{t("plan-change-time")}</th><th scope="col">{t("plan-cap-while-changing")}</th><th scope="col">{t("page-fits")}</th></tr></thead>
        <tbody>{points.map((point, index) => {
          const called = trial.called.find((one) => one.number === index);
          const wrong = called ? called.wrong_road_m > 0 || called.reached_km == null : !point.fits;
          return (
            <tr key={index}>
              <th scope="row">{index + 1}</th><td>{point.load_state}</td>
              <td>{point.action === "raise" ? "▲" : "▼"} {t(point.action === "raise" ? "plan-start-raising" : "plan-start-lowering")}: {point.to_rung}</td>
              <td>{amount(called?.km ?? point.km, "distance")}{called && <> <small>({t("page-planned-at", { place: amount(point.km, "distance") })})</small></>}
                {moved.value.some((one) => one.number === index) && <button onClick={() => { moved.value = moved.value.filter((one) => one.number !== index); }}>{t("page-put-back")}</button>}</td>
              <td>{amount(point.reach_by_km, "distance")}</td><td>{amount(point.lead_m, "span", "up")}</td>
              <td>{digits(point.change_time_s / 60, 1, "up")} min</td><td>{amount(point.cap_kmh, "speed", "down")}</td>
              <td class={wrong ? "wrong" : ""}>{wrong ? (called ? t("page-late-by", { road: amount(called.wrong_road_m, "span", "up") }) : t("page-does-not-fit")) : t("page-does-fit")}</td>
            </tr>
          );
        })}</tbody>
      </table></div>
    </section>
  );
}
