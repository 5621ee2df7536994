// The frame: the parts to choose from, language and units, what must be told at once.
import { Component } from "preact";
import type { ComponentChildren } from "preact";
import { chooseLanguage, chooseLook, chooseUnits, language, look, notice, place, profile, reachable, site } from "./state";
import { parts } from "./parts";
import { t } from "./words";

const NAMES = new Map<string, string>();
function languageName(tag: string): string {
  if (!NAMES.has(tag)) NAMES.set(tag, new Intl.DisplayNames([tag], { type: "language" }).of(tag) ?? tag);
  return NAMES.get(tag)!;
}

export function Shell() {
  const part = parts.find((one) => one.id === place.value[0]) ?? parts.find((one) => one.id === "plan")!;
  const View = part.view;
  const served = site.value!;
  return (
    <>
      <a class="skip" href="#content" onClick={(event) => { event.preventDefault(); document.getElementById("content")?.focus(); }}>{t("page-skip")}</a>
      <header class="top">
        <p class="survey-name"><strong>Airtide</strong> <span>{served.survey}</span></p>
        <nav aria-label={t("page-parts")}>
          {parts.map((one) => (
            <a key={one.id} href={`#/${one.id}`} aria-current={one === part ? "page" : undefined}>{t(`page-part-${one.id}`)}</a>
          ))}
        </nav>
        <div class="choices">
          <label>{t("page-language")}
            <select value={language.value} onChange={(event) => chooseLanguage(event.currentTarget.value)}>
              {[...new Set([...served.languages, language.value])].map((tag) => <option key={tag} value={tag}>{languageName(tag)}</option>)}
            </select>
          </label>
          <label>{t("page-units")}
            <select value={profile.value} onChange={(event) => chooseUnits(event.currentTarget.value)}>
              {["si", "us", "metric-bar"].map((name) => <option key={name} value={name}>{t(`page-units-${name}`)}</option>)}
            </select>
          </label>
          <label>{t("page-look")}
            <select value={look.value} onChange={(event) => chooseLook(event.currentTarget.value as "auto")}>
              {["auto", "light", "dark"].map((name) => <option key={name} value={name}>{t(`page-look-${name}`)}</option>)}
            </select>
          </label>
        </div>
      </header>
      <div class="told" role="status">
        {!reachable.value && <p class="wrong">{t("page-unreachable")}</p>}
        {notice.value && <p>{t(notice.value)} <button onClick={() => { notice.value = null; }}>{t("page-understood")}</button></p>}
        {served.read_only && <p>{t("page-read-only")}</p>}
        {served.pairing_code && <p>{t("page-pairing-code", { code: served.pairing_code })}</p>}
      </div>
      <main id="content" tabIndex={-1}><Whole key={part.id}><View /></Whole></main>
      <footer>
        <p>{t("caution-maker-approves")} {t("caution-law-decides")} {t("caution-rollover")}</p>
      </footer>
    </>
  );
}

/// A part that fails takes neither the frame nor the other parts with it.
class Whole extends Component<{ children: ComponentChildren }, { failed: string | null }> {
  state = { failed: null as string | null };

  static getDerivedStateFromError(error: Error) {
    return { failed: error.message };
  }

  render() {
    if (this.state.failed === null) return this.props.children;
    return (
      <section>
        <h1>{t("page-failed")}</h1>
        <p class="wrong" role="alert">{this.state.failed}</p>
        <button onClick={() => this.setState({ failed: null })}>{t("page-failed-again")}</button>
      </section>
    );
  }
}
