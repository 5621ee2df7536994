// Which haul: the address holds it, so a reload stays where one was.
import { goTo, place, site } from "./state";
import { t } from "./words";

export function chosenHaul() {
  const hauls = site.value?.hauls ?? [];
  return hauls.find((haul) => haul.name === place.value[1]) ?? hauls[0];
}

export function HaulChoice({ part }: { part: string }) {
  const hauls = site.value!.hauls;
  const broken = site.value!.broken_hauls;
  return (
    <>
      {hauls.length > 1 && (
        <label class="choice">{t("page-haul")}
          <select value={chosenHaul()?.name} onChange={(event) => goTo(part, event.currentTarget.value)}>
            {hauls.map((haul) => <option key={haul.name}>{haul.name}</option>)}
          </select>
        </label>
      )}
      {(hauls.length === 0 || broken.length > 0) && (
        <p class="wrong" role="alert">
          {hauls.length === 0 ? t("page-no-haul") : t("page-broken-hauls", { hauls: broken.join(", ") })}{" "}
          <a href="#/survey">{t("page-see-problems")}</a>
        </p>
      )}
    </>
  );
}
