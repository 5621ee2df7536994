// The survey: its files as forms, every problem, each change saved at once and taken back at will.
import { useEffect, useState } from "preact/hooks";
import { get } from "../../api";
import type { FileEntry, Problem } from "../../documents";
import { files, goTo, place, site, surveyHash } from "../../state";
import { t } from "../../words";
import { again, conflict, file, open, saveText, steps, told, undo } from "./editing";
import { Problems } from "./field";
import { Form } from "./form";
import { RouteOnMap } from "./route_map";
import type { Schema } from "./schema";

const FOLDERS = ["survey", "units", "tire", "vehicle", "combination", "route", "haul", "permit", "approval"];

export function SurveyPart() {
  const path = place.value.slice(1).join("/");
  const [schemas, setSchemas] = useState<Record<string, Schema> | null>(null);
  const [check, setCheck] = useState<Problem[]>([]);
  useEffect(() => { get<Record<string, Schema>>("/schemas").then(setSchemas).catch(() => setSchemas({})); }, []);
  useEffect(() => { get<{ problems: Problem[] }>("/check").then((one) => setCheck(one.problems)).catch(() => undefined); }, [surveyHash.value]);
  useEffect(() => { if (path) open(path); else file.value = null; }, [path]);
  return (
    <section class="survey">
      <h1>{t("page-part-survey")}: {site.value!.survey}</h1>
      <div class="columns">
        <nav class="files" aria-label={t("page-files")}>
          {FOLDERS.map((kind) => <Folder key={kind} kind={kind} entries={files.value.filter((one) => one.kind === kind)} chosen={path} />)}
        </nav>
        <div class="file">
          {told.value && <p role="status">{told.value}</p>}
          {conflict.value && <p class="wrong" role="alert">{t("page-conflict")} <button onClick={again}>{t("page-conflict-again")}</button> <button onClick={() => open(path)}>{t("page-conflict-theirs")}</button></p>}
          {file.value && file.value.path === path ? <FileForm schemas={schemas} /> : <All problems={check} />}
        </div>
      </div>
    </section>
  );
}

function Folder({ kind, entries, chosen }: { kind: string; entries: FileEntry[]; chosen: string }) {
  if (entries.length === 0) return null;
  return (
    <div><h2>{t(`page-files-${kind}`)}</h2><ul>
      {entries.map((one) => (
        <li key={one.path}><a href={`#/survey/${one.path.split("/").map(encodeURIComponent).join("/")}`} aria-current={one.path === chosen ? "true" : undefined}>
          {one.path.split("/").at(-1)!.replace(/\.toml$/, "")}
          {one.errors > 0 && <span class="wrong"> ! {t("check-errors", { count: one.errors })}</span>}
          {one.errors === 0 && one.warnings > 0 && <span class="note"> △ {one.warnings}</span>}
        </a></li>
      ))}
    </ul></div>
  );
}

function All({ problems }: { problems: Problem[] }) {
  if (problems.length === 0) return <p>{t("page-no-problems")}</p>;
  return (
    <div><h2>{t("page-problems")}</h2><ul class="problem-list">
      {problems.map((one, index) => (
        <li key={index} class={one.severity === "error" ? "wrong" : ""}>
          <button class="link" onClick={() => one.file && goTo("survey", ...one.file.split("/"))}>{one.file || site.value!.survey}{one.line ? `:${one.line}` : ""}</button> {one.message}{one.hint && <><br /><small>{one.hint}</small></>}
        </li>
      ))}
    </ul></div>
  );
}

function FileForm({ schemas }: { schemas: Record<string, Schema> | null }) {
  const [raw, setRaw] = useState<string | null>(null);
  const now = file.value!;
  const schema = now.kind ? schemas?.[now.kind] : undefined;
  const values = now.values as Record<string, unknown> | null;
  const loose = now.problems.filter((one) => !one.pointer);
  return (
    <article>
      <div class="file-head">
        <h2>{now.path}</h2>
        {!site.value!.read_only && <button disabled={steps() === 0} onClick={undo}>{t("page-undo")} {steps() > 0 && `(${steps()})`}</button>}
        {raw === null ? <button onClick={() => setRaw(now.text)}>{t("page-as-text")}</button> : <button onClick={() => setRaw(null)}>{t("page-as-form")}</button>}
      </div>
      {schema?.description && <p class="about">{schema.description}</p>}
      {loose.map((one, index) => <p key={index} class={one.severity === "error" ? "wrong" : "note"} role="alert">{one.line ? `${one.line}: ` : ""}{one.message}{one.hint && <><br /><small>{one.hint}</small></>}</p>)}
      <Problems at="" />
      {now.kind === "route" && <RouteOnMap name={now.path.replace(/^routes\//, "").replace(/\.toml$/, "")} />}
      {raw !== null || !values ? (
        <div class="raw">
          <label>{t("page-text-of-file")}<textarea rows={28} spellcheck={false} value={raw ?? now.text} onInput={(event) => setRaw(event.currentTarget.value)} /></label>
          {!site.value!.read_only && <button class="main" onClick={async () => { if (await saveText(raw ?? now.text)) setRaw(null); }}>{t("page-save")}</button>}
        </div>
      ) : schema && <Form values={values} schema={schema} pointer="" />}
    </article>
  );
}
