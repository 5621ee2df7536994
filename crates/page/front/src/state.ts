// What the whole page shares: the survey served, language, units, look, the part on show.
import { effect, signal } from "@preact/signals";
import { Refused, get, openSite } from "./api";
import type { FileEntry, Site, UnitForm } from "./documents";
import { readTexts } from "./words";

export const site = signal<Site | null>(null);
export const forms = signal<UnitForm[]>([]);
export const profile = signal("si");
export const language = signal("en");
export const look = signal<"auto" | "light" | "dark">("auto");
export const place = signal<string[]>([]);
export const reachable = signal(true);
export const files = signal<FileEntry[]>([]);
export const surveyHash = signal("");
export const notice = signal<string | null>(null);

const remembered = (key: string) => {
  try { return localStorage.getItem(`airtide-${key}`); } catch { return null; }
};
const remember = (key: string, value: string) => {
  try { localStorage.setItem(`airtide-${key}`, value); } catch { /* a private window keeps nothing */ }
};

export const readPlace = () => {
  place.value = location.hash.replace(/^#\/?/, "").split("/").filter(Boolean).map(decodeURIComponent);
};
export const goTo = (...parts: string[]) => { location.hash = `#/${parts.map(encodeURIComponent).join("/")}`; };

export async function chooseLanguage(tag: string) {
  await readTexts(tag);
  language.value = tag;
  document.documentElement.lang = tag;
  remember("language", tag);
}
export const chooseUnits = (name: string) => { profile.value = name; remember("units", name); };
export const chooseLook = (name: "auto" | "light" | "dark") => { look.value = name; remember("look", name); };

/// Reads what changes when a file is saved.
export async function refresh() {
  const [fresh, list] = await Promise.all([openSite(), get<{ hash: string; files: FileEntry[] }>("/files")]);
  site.value = fresh;
  files.value = list.files;
  surveyHash.value = list.hash;
}

export async function begin() {
  const [units] = await Promise.all([get<{ forms: UnitForm[] }>("/units"), refresh()]);
  forms.value = units.forms;
  const served = site.value!;
  profile.value = remembered("units") ?? served.units;
  look.value = (remembered("look") as "light" | "dark" | null) ?? "auto";
  const known = (tag: string) => served.languages.some((one) => tag === one || tag.startsWith(`${one}-`));
  const wanted = [remembered("language"), served.language, "en"].find((tag) => tag && known(tag))!;
  await chooseLanguage(wanted);
  readPlace();
  addEventListener("hashchange", readPlace);
  effect(() => { document.documentElement.dataset.look = look.value; });
  setInterval(watch, 3000);
}

/// Sees whether the program still runs and whether somebody else saved a file.
async function watch() {
  try {
    const list = await get<{ hash: string; files: FileEntry[] }>("/files");
    if (!reachable.value) await refresh();
    reachable.value = true;
    if (list.hash !== surveyHash.value) {
      await refresh();
      notice.value = "page-changed-elsewhere";
    }
  } catch (error) {
    if (error instanceof Refused && error.status === 0) reachable.value = false;
  }
}
